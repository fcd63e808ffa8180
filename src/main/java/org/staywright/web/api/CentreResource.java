package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.form.job.CentreForm;
import org.staywright.web.api.request.JsonBody;
import org.staywright.web.api.request.Query;

/** Where a flap's centre of mass lies. */
@Path("/api/v1/centre-of-mass")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class CentreResource {

  @POST
  public CentreForm.CentreAnswer centreOfMass(byte[] body, UriInfo uri) {
    Query.none(uri);
    return CentreForm.CentreAnswer.of(CentreForm.read(JsonBody.read(body)));
  }
}
