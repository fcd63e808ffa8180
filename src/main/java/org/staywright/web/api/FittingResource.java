package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.form.part.FittingJson;
import org.staywright.form.part.SearchShape;
import org.staywright.form.table.PageJson;
import org.staywright.part.Fitting;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Preference;
import org.staywright.wording.PartText;

/** The end fittings and brackets of the range. */
@Path("/api/v1/fittings")
@Produces(MediaType.APPLICATION_JSON)
public class FittingResource {

  private final CurrentRange current;

  FittingResource(CurrentRange current) {
    this.current = current;
  }

  @GET
  public ObjectNode listFittings(UriInfo uri) {
    JsonNode query = Query.read(SearchShape.FITTINGS, uri);
    return PageJson.of(query, SearchShape.fittings(query).in(current.get()), this::json);
  }

  @GET
  @Path("{partNumber}")
  public ObjectNode fitting(@PathParam("partNumber") String partNumber, UriInfo uri) {
    Query.none(uri);
    return current
        .get()
        .fitting(partNumber)
        .map(this::json)
        .orElseThrow(() -> new NotThere("problem.no-fitting", partNumber));
  }

  private ObjectNode json(Fitting fitting) {
    return FittingJson.of(fitting, PartText.in(Preference.now().metric()).describe(fitting));
  }
}
