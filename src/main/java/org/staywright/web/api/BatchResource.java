package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
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
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;
import org.apache.commons.csv.CSVPrinter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.staywright.form.batch.BatchJson;
import org.staywright.form.job.JobFile;
import org.staywright.form.table.RowFile;
import org.staywright.job.batch.Batch;
import org.staywright.job.batch.Batches;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Problem;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.shell.Preference;

/** Many jobs at once: begun, and their results as they come. */
@Path("/api/v1/batches")
@Produces(MediaType.APPLICATION_JSON)
public class BatchResource {

  private static final String UNKNOWN = "batch.unknown";

  private final Batches batches;
  private final CurrentRange current;

  BatchResource(Batches batches, CurrentRange current) {
    this.batches = batches;
    this.current = current;
  }

  @POST
  @Consumes({MediaType.APPLICATION_JSON, StockResource.CSV})
  @APIResponseSchema(value = TaskAnswer.class, responseCode = "202")
  @Refuses(503)
  public Response addBatch(byte[] body, HttpHeaders headers, UriInfo uri) {
    JsonNode query = Query.read(BatchJson.QUERY, uri);
    boolean json = headers.getMediaType().getSubtype().equals("json");
    JobFile file = json ? JobFile.json(body, current.get()) : JobFile.csv(body, current.get());
    if (file.faultCount() > 0) {
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.put("rows", file.rows().size()).put("faultCount", file.faultCount());
      ImportJson.list(told.putArray("faults"), file.faults());
      return Problem.of(Preference.now().metric(), 422, "batch.faulty", file.faultCount())
          .response(told);
    }
    Batch batch = batches.begin(query.path("name").asText("batch"), file.rows());
    return Response.accepted(task(batch))
        .location(uri.getBaseUriBuilder().path("api/v1/tasks").path(batch.id()).build())
        .build();
  }

  @GET
  public ObjectNode listBatches(UriInfo uri) {
    Query.none(uri);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode items = json.putArray("items");
    batches.all().forEach(batch -> items.add(json(batch)));
    return json;
  }

  @GET
  @Path("{id}")
  public ObjectNode batch(@PathParam("id") String id, UriInfo uri) {
    Query.none(uri);
    return json(find(id));
  }

  /** What there is so far: some 2 kB a job. */
  @GET
  @Path("{id}/results.json")
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
          csv.printRecord(BatchJson.COLUMNS);
          each(id, result -> csv.printRecord(BatchJson.cells(result)));
          csv.flush();
        };
    return PartsListResource.attached(rows, "results.csv");
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
    return new TaskAnswer(batch.state(), batch.tally().done(), batch.total(), json(batch));
  }

  private static ObjectNode json(Batch batch) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", batch.id()).put("name", batch.name());
    json.put("created", batch.created().toString());
    json.put("state", batch.state().code());
    json.put("done", batch.tally().done()).put("total", batch.total());
    json.put("fits", batch.tally().fits()).put("near", batch.tally().near());
    json.put("none", batch.tally().none()).put("refused", batch.tally().refused());
    json.put("results", "/api/v1/batches/" + batch.id() + "/results.json");
    return json;
  }
}
