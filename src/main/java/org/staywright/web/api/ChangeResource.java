package org.staywright.web.api;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Audit;
import org.staywright.database.AuditSearch;
import org.staywright.database.Author.Standing;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.database.Recorded;
import org.staywright.document.order.PartsListCsv;
import org.staywright.form.schema.JsonText;
import org.staywright.web.api.request.NotThere;
import org.staywright.web.api.request.Query;
import org.staywright.web.audit.ChangesQuery;
import org.staywright.web.shell.Download;

/** Who did what. It is read here, and never changed. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
public class ChangeResource {

  /** Read at a time: what comes meanwhile is newer, and those asked for stay as they are. */
  private static final int PIECE = 500;

  /**
   * A change.
   *
   * @param author name as given; what it is worth is told by the standing
   * @param id of the thing among its kind
   */
  public record RecordedAnswer(
      long number,
      Instant happened,
      String author,
      Standing standing,
      @Nullable String address,
      @Nullable String request,
      Subject subject,
      String id,
      Action action,
      @Nullable Object before,
      @Nullable Object after) {

    private static RecordedAnswer of(Recorded row) {
      return new RecordedAnswer(
          row.id(),
          row.happened(),
          row.author().name(),
          row.author().standing(),
          row.author().address(),
          row.author().request(),
          row.change().subject(),
          row.change().id(),
          row.change().action(),
          tree(row.change().before()),
          tree(row.change().after()));
    }

    private static @Nullable Object tree(@Nullable String json) {
      return json == null ? null : JsonText.tree(json);
    }
  }

  /**
   * Some changes, the newest first.
   *
   * @param next to ask for those before them with, null where there are none
   */
  public record ChangesAnswer(List<RecordedAnswer> items, @Nullable String next) {}

  private final Audit audit;

  ChangeResource(Audit audit) {
    this.audit = audit;
  }

  @GET
  @Path("changes")
  public ChangesAnswer listChanges(UriInfo uri) {
    JsonNode query = Query.read(ChangesQuery.PAGE, uri);
    int size = query.get("size").intValue();
    List<Recorded> rows =
        audit.page(ChangesQuery.search(query), ChangesQuery.before(query), size + 1);
    boolean more = rows.size() > size;
    return new ChangesAnswer(
        rows.stream().limit(size).map(RecordedAnswer::of).toList(),
        more ? rows.get(size - 1).place().code() : null);
  }

  @GET
  @Path("changes/{n}")
  public RecordedAnswer change(@PathParam("n") String n, UriInfo uri) {
    Query.none(uri);
    if (!n.matches("[0-9]{1,18}")) {
      throw new NotThere("audit.none", n);
    }
    return audit
        .find(Long.parseLong(n))
        .map(RecordedAnswer::of)
        .orElseThrow(() -> new NotThere("audit.none", n));
  }

  /** All that are asked for, however many. */
  @GET
  @Path("changes.csv")
  @Produces(StockResource.CSV)
  public Response changesCsv(UriInfo uri) {
    AuditSearch search = ChangesQuery.search(Query.read(ChangesQuery.SEARCH, uri));
    StreamingOutput rows = bytes -> write(search, bytes);
    return Download.kept(rows, "changes.csv");
  }

  private void write(AuditSearch search, OutputStream bytes) throws IOException {
    CSVPrinter csv =
        new CSVPrinter(new OutputStreamWriter(bytes, StandardCharsets.UTF_8), CSVFormat.RFC4180);
    csv.printRecord(
        "number",
        "happened",
        "author",
        "standing",
        "address",
        "request",
        "subject",
        "id",
        "action",
        "before",
        "after");
    Recorded.Place before = null;
    List<Recorded> piece;
    do {
      piece = audit.page(search, before, PIECE);
      for (Recorded row : piece) {
        csv.printRecord(cells(row));
        before = row.place();
      }
    } while (piece.size() == PIECE);
    csv.flush();
  }

  private static List<String> cells(Recorded row) {
    return Stream.of(
            Long.toString(row.id()),
            row.happened().toString(),
            row.author().name(),
            row.author().standing().code(),
            row.author().address(),
            row.author().request(),
            row.change().subject().code(),
            row.change().id(),
            row.change().action().code(),
            row.change().before(),
            row.change().after())
        .map(cell -> cell == null ? "" : PartsListCsv.safe(cell))
        .toList();
  }
}
