package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.staywright.document.part.Datasheet;
import org.staywright.form.part.LockedCurveAnswer;
import org.staywright.form.part.PartAnswer;
import org.staywright.form.part.PartCurveAnswer;
import org.staywright.form.part.SearchShape;
import org.staywright.form.table.Page;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.part.Selection;
import org.staywright.spring.ForceCurve;
import org.staywright.spring.ForceLaw;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Unit;
import org.staywright.web.api.request.LockedQuery;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.shell.Preference;
import org.staywright.wording.PartText;

/** The springs of the range. */
@Path("/api/v1/parts")
@Produces(MediaType.APPLICATION_JSON)
public class PartResource {

  private final CurrentRange current;

  PartResource(CurrentRange current) {
    this.current = current;
  }

  @GET
  public Page<PartAnswer> listParts(UriInfo uri) {
    JsonNode query = Query.read(SearchShape.PARTS, uri);
    Range range = current.get();
    Page.Asked asked = Page.Asked.of(query);
    long from = Math.min(range.size(), (long) asked.page() * asked.size());
    Selection found =
        SearchShape.parts(query)
            .rows(
                range,
                SearchShape.order(query),
                SearchShape.falling(query),
                (int) from,
                asked.size());
    return asked.of(found.total(), found.rows(), row -> answer(range.part(row)));
  }

  @GET
  @Path("{partNumber}")
  public PartAnswer part(@PathParam("partNumber") String partNumber, UriInfo uri) {
    Query.none(uri);
    return answer(find(partNumber));
  }

  @GET
  @Path("{partNumber}/curve")
  @Refuses(422)
  public PartCurveAnswer partCurve(@PathParam("partNumber") String partNumber, UriInfo uri) {
    JsonNode query = Query.read(SearchShape.CURVE, uri);
    Part part = find(partNumber);
    double kelvin = Unit.CELSIUS.si(query.get("temperatureC").doubleValue());
    ForceLaw law =
        part.spring()
            .law(query.get("forceFactor").doubleValue(), query.get("gasFraction").doubleValue());
    ForceCurve curve = ForceCurve.of(law, kelvin, query.get("samples").intValue());
    return PartCurveAnswer.of(part, kelvin, curve);
  }

  @GET
  @Path("{partNumber}/locked-curve")
  @Refuses(422)
  public LockedCurveAnswer lockedCurve(@PathParam("partNumber") String partNumber, UriInfo uri) {
    JsonNode query = Query.read(SearchShape.LOCKED_CURVE, uri);
    return LockedCurveAnswer.of(LockedQuery.curve(find(partNumber), query));
  }

  @GET
  @Path("{partNumber}/datasheet.pdf")
  @Produces("application/pdf")
  public Response datasheet(@PathParam("partNumber") String partNumber, UriInfo uri) {
    Query.document(uri);
    byte[] pdf = Datasheet.pdf(find(partNumber), Preference.now().wording());
    return Response.ok(pdf)
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + partNumber + ".pdf\"")
        .build();
  }

  private Part find(String partNumber) {
    return current
        .get()
        .part(partNumber)
        .orElseThrow(() -> new NotThere("problem.no-part", partNumber));
  }

  private static PartAnswer answer(Part part) {
    return PartAnswer.of(part, PartText.in(Preference.now().metric()).describe(part));
  }
}
