package org.staywright.web.door;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.ForbiddenException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;

/** What is shown in the place of a page that its reader's role does not allow. */
@Path(NotAllowed.PATH)
public final class NotAllowed {

  static final String PATH = "/not-allowed";

  /** Nobody asks for it by its address. */
  @GET
  public void show(RoutingContext context) {
    if (context.get(PATH) == null) {
      throw new NotFoundException();
    }
    throw new ForbiddenException();
  }
}
