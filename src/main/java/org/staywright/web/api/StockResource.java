package org.staywright.web.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.staywright.form.stock.StockShape;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Revision;
import org.staywright.stock.RevisionDifference;
import org.staywright.stock.SampleFile;
import org.staywright.stock.Stock;
import org.staywright.stock.file.StockCsv;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;

/** The range itself: given out, and its revisions. */
@Path("/api/v1/stock")
@Produces(MediaType.APPLICATION_JSON)
public class StockResource {

  public static final String CSV = "text/csv";

  private final Stock stock;
  private final CurrentRange current;

  StockResource(Stock stock, CurrentRange current) {
    this.stock = stock;
    this.current = current;
  }

  @GET
  @Path("export.csv")
  @Produces(CSV)
  public Response exportStock(UriInfo uri) {
    Query.none(uri);
    Range range = current.get();
    StreamingOutput rows =
        bytes -> StockCsv.write(range, new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
    return PartsListResource.attached(rows, "stock-" + range.revision() + ".csv");
  }

  @GET
  @Path("sample.csv")
  @Produces(CSV)
  public Response stockSample(UriInfo uri) {
    Query.none(uri);
    return PartsListResource.attached(SampleFile.csv(), "stock-sample.csv");
  }

  @GET
  @Path("sample.xlsx")
  @Produces(PartsListResource.XLSX)
  public Response stockSampleXlsx(UriInfo uri) {
    Query.none(uri);
    return PartsListResource.attached(SampleFile.workbook(), "stock-sample.xlsx");
  }

  @GET
  @Path("revisions")
  public ObjectNode revisions(UriInfo uri) {
    Query.none(uri);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode items = json.putArray("items");
    for (Revision revision : stock.revisions()) {
      items
          .addObject()
          .put("revision", revision.number())
          .put("created", revision.created().toString())
          .put("origin", revision.origin());
    }
    return json;
  }

  /** What came, changed and went between two revisions. */
  @GET
  @Path("revisions/{n}/changes")
  public ObjectNode revisionChanges(@PathParam("n") String n, UriInfo uri) {
    int since = Query.read(StockShape.CHANGES, uri).path("since").asInt();
    RevisionDifference found = stock.difference(known(Integer.toString(since)), known(n));
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("from", found.from()).put("to", found.to());
    listed(json.putObject("added"), found.added());
    ObjectNode changed = json.putObject("changed").put("count", found.changed().count());
    ArrayNode parts = changed.putArray("first");
    for (RevisionDifference.Changed each : found.changed().first()) {
      ObjectNode part = parts.addObject().put("partNumber", each.partNumber());
      ArrayNode cells = part.putArray("values");
      each.cells()
          .forEach(
              cell ->
                  cells
                      .addObject()
                      .put("column", cell.column())
                      .put("before", cell.before())
                      .put("after", cell.after()));
    }
    listed(json.putObject("gone"), found.gone());
    return json;
  }

  private static void listed(ObjectNode json, RevisionDifference.Listed<String> listed) {
    json.put("count", listed.count());
    ArrayNode first = json.putArray("first");
    listed.first().forEach(first::add);
  }

  @POST
  @Path("revisions/{n}/restore")
  @Refuses(409)
  public ObjectNode restoreRevision(@PathParam("n") String n, UriInfo uri) {
    Query.none(uri);
    int revision = stock.restore(known(n), "revision " + known(n));
    return JsonNodeFactory.instance.objectNode().put("revision", revision);
  }

  private int known(String n) {
    List<Revision> revisions = stock.revisions();
    return revisions.stream()
        .map(Revision::number)
        .filter(number -> number.toString().equals(n))
        .findFirst()
        .orElseThrow(() -> new NotThere("stock.no-revision", n));
  }
}
