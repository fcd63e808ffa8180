package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.StringJoiner;
import org.apache.commons.csv.CSVPrinter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.staywright.form.batch.BatchRequest;
import org.staywright.form.batch.BatchResultAnswer;
import org.staywright.form.batch.BatchRow;
import org.staywright.form.job.JobFile;
import org.staywright.form.table.ItemsAnswer;
import org.staywright.form.table.RowFile;
import org.staywright.job.batch.Batch;
import org.staywright.job.batch.Batches;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Problem;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.Preference;
import org.staywright.wording.Wording;

/** Many jobs at once: begun, and their results as they come. */
@Path("/api/v1/batches")
@Produces(MediaType.APPLICATION_JSON)
public class BatchResource {

  private static final String UNKNOWN = "batch.unknown";

  /** What is wrong with the rows of a file. */
  private record FaultyAnswer(int rows, int faultCount, List<RowFaultAnswer> faults) {

    static FaultyAnswer of(JobFile file, Wording wording) {
      return new FaultyAnswer(
          file.rows().size(), file.faultCount(), RowFaultAnswer.all(file.faults(), wording));
    }
  }

  private final Batches batches;
  private final CurrentRange current;
  private final Sender sender;

  BatchResource(Batches batches, CurrentRange current, Sender sender) {
    this.batches = batches;
    this.current = current;
    this.sender = sender;
  }

  @POST
  @Consumes({MediaType.APPLICATION_JSON, StockResource.CSV, PartsListResource.XLSX})
  @APIResponseSchema(value = TaskAnswer.class, responseCode = "202")
  @Refuses(503)
  public Response addBatch(
      InputStream body, @HeaderParam(Sender.FROM) String from, HttpHeaders headers, UriInfo uri)
      throws IOException {
    JsonNode query = Query.read(BatchRequest.QUERY, uri);
    boolean json = headers.getMediaType().getSubtype().equals("json");
    JobFile file =
        json
            ? JobFile.json(body.readAllBytes(), current.get())
            : JobFile.table(body, current.get());
    if (file.faultCount() > 0) {
      Wording wording = Preference.now().metric();
      return Problem.of(wording, 422, "batch.faulty", file.faultCount())
          .response(FaultyAnswer.of(file, wording));
    }
    Batch batch = batches.begin(sender.sent(from), query.path("name").asText("batch"), file.rows());
    return Response.accepted(task(batch))
        .location(uri.getBaseUriBuilder().path("api/v1/tasks").path(batch.id()).build())
        .build();
  }

  @GET
  public ItemsAnswer<BatchAnswer> listBatches(UriInfo uri) {
    Query.none(uri);
    return new ItemsAnswer<>(batches.all().stream().map(BatchAnswer::of).toList());
  }

  @GET
  @Path("{id}")
  public BatchAnswer batch(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return BatchAnswer.of(find(id));
  }

  /** What there is so far: some 2 kB a job. */
  @GET
  @Path("{id}/results.json")
  @APIResponseSchema(BatchResultAnswer.BatchResultsAnswer.class)
  public String batchResults(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    find(id);
    StringJoiner items = new StringJoiner(",\n", "{\"items\":[\n", "\n]}\n");
    batches.results(id, result -> items.add(result.toString()));
    return items.toString();
  }

  @GET
  @Path("{id}/results.csv")
  @Produces(StockResource.CSV)
  public Response batchResultsCsv(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    find(id);
    StreamingOutput rows =
        bytes -> {
          CSVPrinter csv =
              new CSVPrinter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), RowFile.FORMAT);
          csv.printRecord(BatchRow.COLUMNS);
          each(id, result -> csv.printRecord(BatchRow.cells(result)));
          csv.flush();
        };
    return Download.kept(rows, "results.csv");
  }

  private interface Writing {
    void write(JsonNode result) throws IOException;
  }

  private void each(String id, Writing writing) throws IOException {
    try {
      batches.results(
          id,
          result -> {
            try {
              writing.write(result);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private Batch find(String id) {
    return batches.find(id).orElseThrow(() -> new NotThere(UNKNOWN, id));
  }

  /** As its task tells it. */
  static TaskAnswer task(Batch batch) {
    return new TaskAnswer(
        batch.state(), batch.tally().done(), batch.total(), BatchAnswer.of(batch));
  }
}
