package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.form.part.FittingAnswer;
import org.staywright.form.part.SearchShape;
import org.staywright.form.table.Page;
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
  public Page<FittingAnswer> listFittings(UriInfo uri) {
    JsonNode query = Query.read(SearchShape.FITTINGS, uri);
    return Page.Asked.of(query)
        .of(SearchShape.fittings(query).in(current.get()), FittingResource::answer);
  }

  @GET
  @Path("{partNumber}")
  public FittingAnswer fitting(@PathParam("partNumber") String partNumber, UriInfo uri) {
    Query.none(uri);
    return current
        .get()
        .fitting(partNumber)
        .map(FittingResource::answer)
        .orElseThrow(() -> new NotThere("problem.no-fitting", partNumber));
  }

  private static FittingAnswer answer(Fitting fitting) {
    return FittingAnswer.of(fitting, PartText.in(Preference.now().metric()).describe(fitting));
  }
}
