package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
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
import java.time.Instant;
import java.util.List;
import org.staywright.form.stock.StockShape;
import org.staywright.form.table.ItemsAnswer;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Revision;
import org.staywright.stock.RevisionDifference;
import org.staywright.stock.SampleFile;
import org.staywright.stock.Stock;
import org.staywright.stock.StockCsv;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.Download;

/** The range itself: given out, and its revisions. */
@Path("/api/v1/stock")
@Produces(MediaType.APPLICATION_JSON)
public class StockResource {

  public static final String CSV = "text/csv";

  /** A state of the range; the origin is where its rows came from. */
  public record RevisionAnswer(int revision, Instant created, String origin) {

    private static RevisionAnswer of(Revision revision) {
      return new RevisionAnswer(revision.number(), revision.created(), revision.origin());
    }
  }

  /** The revision made of an older one. */
  public record RestoredAnswer(int revision) {}

  private final Stock stock;
  private final CurrentRange current;
  private final Sender sender;

  StockResource(Stock stock, CurrentRange current, Sender sender) {
    this.stock = stock;
    this.current = current;
    this.sender = sender;
  }

  @GET
  @Path("export.csv")
  @Produces(CSV)
  public Response exportStock(UriInfo uri) {
    Query.none(uri);
    Range range = current.get();
    StreamingOutput rows =
        bytes -> StockCsv.write(range, new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
    return Download.kept(rows, "stock-" + range.revision() + ".csv");
  }

  @GET
  @Path("sample.csv")
  @Produces(CSV)
  public Response stockSample(UriInfo uri) {
    Query.none(uri);
    return Download.kept(SampleFile.csv(), "stock-sample.csv");
  }

  @GET
  @Path("sample.xlsx")
  @Produces(PartsListResource.XLSX)
  public Response stockSampleXlsx(UriInfo uri) {
    Query.none(uri);
    return Download.kept(SampleFile.workbook(), "stock-sample.xlsx");
  }

  @GET
  @Path("revisions")
  public ItemsAnswer<RevisionAnswer> revisions(UriInfo uri) {
    Query.none(uri);
    return new ItemsAnswer<>(stock.revisions().stream().map(RevisionAnswer::of).toList());
  }

  /** What came, changed and went between two revisions. */
  @GET
  @Path("revisions/{n}/changes")
  public RevisionDifference revisionChanges(@PathParam("n") String n, UriInfo uri) {
    int since = Query.read(StockShape.CHANGES, uri).path("since").asInt();
    return stock.difference(known(Integer.toString(since)), known(n));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Path("revisions/{n}/restore")
  @Refuses(409)
  public RestoredAnswer restoreRevision(
      @PathParam("n") String n, @HeaderParam(Sender.FROM) String from, UriInfo uri) {
    Query.none(uri);
    return new RestoredAnswer(stock.restore(sender.sent(from), known(n), "revision " + known(n)));
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
