package org.staywright.web.door;

import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;

/** What is shown in the place of a page that its reader's role does not allow. */
@Path(NotAllowed.PATH)
public final class NotAllowed {

  static final String PATH = "/not-allowed";

  @GET
  public void show() {
    throw new ForbiddenException();
  }
}
