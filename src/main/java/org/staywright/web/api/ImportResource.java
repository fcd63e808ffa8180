package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.staywright.database.Author;
import org.staywright.form.stock.StockShape;
import org.staywright.job.task.Tasks;
import org.staywright.stock.intake.ImportOptions;
import org.staywright.stock.intake.Imports;
import org.staywright.stock.intake.Inbox;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Prefer;
import org.staywright.web.api.request.Problem;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.Preference;
import org.staywright.web.shell.ProgramMetrics;

/** Files of stock: tried and taken in. */
@Path("/api/v1/stock/imports")
@Produces(MediaType.APPLICATION_JSON)
public class ImportResource {

  private final Inbox inbox;
  private final Imports imports;
  private final Tasks tasks;
  private final Sender sender;

  ImportResource(Inbox inbox, Imports imports, Tasks tasks, Sender sender) {
    this.inbox = inbox;
    this.imports = imports;
    this.tasks = tasks;
    this.sender = sender;
  }

  @POST
  @Consumes({StockResource.CSV, PartsListResource.XLSX, MediaType.APPLICATION_OCTET_STREAM})
  @APIResponseSchema(ImportAnswer.class)
  @Refuses({409, 503})
  public Response importStock(
      InputStream body,
      @HeaderParam(Prefer.HEADER) String prefer,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri) {
    JsonNode query = Query.read(StockShape.IMPORT, uri);
    Inbox.Kept file = inbox.take(body, query.path("name").asText("import"));
    return answer(file, query, prefer, sender.sent(from), uri);
  }

  /** The same file once more, tried in another way or taken in as it was tried. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Path("{id}")
  @APIResponseSchema(ImportAnswer.class)
  @Refuses({409, 422, 503})
  public Response importAgain(
      @PathParam("id") String id,
      @HeaderParam(Prefer.HEADER) String prefer,
      @HeaderParam(Sender.FROM) String from,
      UriInfo uri) {
    JsonNode query = Query.read(StockShape.AGAIN, uri);
    Inbox.Kept file = inbox.find(id).orElseThrow(() -> new NotThere("stock.no-file", id));
    return answer(file, query, prefer, sender.sent(from), uri);
  }

  private Response answer(
      Inbox.Kept file, JsonNode query, String prefer, Author author, UriInfo uri) {
    boolean dry = query.path("dryRun").booleanValue();
    ImportOptions options =
        ImportOptions.of(
            query.path("mode").asText(),
            query.path("friction").asText(),
            query.path("columns").asText(""));
    if (Prefer.async(prefer)) {
      return TaskResource.begun(
          tasks, progress -> answer(run(author, file, dry, options, progress::goOn)), uri);
    }
    Imports.Outcome outcome = run(author, file, dry, options, (done, total) -> true);
    if (outcome.checked().clean()) {
      return Response.ok(answer(outcome)).build();
    }
    return Problem.of(
            Preference.now().metric(), 422, "stock.problem", outcome.checked().faultCount())
        .response(answer(outcome));
  }

  private static ImportAnswer answer(Imports.Outcome outcome) {
    return ImportAnswer.of(outcome, Preference.now().metric());
  }

  private Imports.Outcome run(
      Author author, Inbox.Kept file, boolean dry, ImportOptions options, Imports.Watch watch) {
    return ProgramMetrics.imported(
        dry ? imports.check(file, options, watch) : imports.write(author, file, options, watch));
  }

  @GET
  @Path("{id}/faults.csv")
  @Produces(StockResource.CSV)
  public Response importFaults(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return Download.kept(
        inbox.faults(id).orElseThrow(() -> new NotThere("stock.no-faults", id)).toFile(),
        "faults.csv");
  }
}
