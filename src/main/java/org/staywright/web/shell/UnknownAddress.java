package org.staywright.web.shell;

import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;

/** Every address that nothing else answers to, so that even there an error has its look. */
@Path("/{path:.+}")
public final class UnknownAddress {

  @GET
  public void get() {
    throw new NotFoundException();
  }

  @POST
  public void post() {
    throw new NotFoundException();
  }

  @PUT
  public void put() {
    throw new NotFoundException();
  }

  @DELETE
  public void delete() {
    throw new NotFoundException();
  }
}
