package org.staywright.web.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Recorded;
import org.staywright.form.schema.JsonText;
import org.staywright.wording.Wording;

/**
 * A change in words.
 *
 * @param happened when
 * @param who did it, and how far that is known
 * @param address that it came from, "" for none
 * @param what was done
 * @param thing address of the page of what was changed, "" where there is none
 */
public record ChangeRow(
    long id, String happened, String who, String address, String what, String thing) {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'").withZone(ZoneOffset.UTC);

  static ChangeRow of(Recorded row, Wording wording) {
    String address = row.author().address();
    return new ChangeRow(
        row.id(),
        time(row.happened()),
        who(row.author(), wording),
        address == null ? "" : address,
        what(row.change(), wording),
        thing(row.change()));
  }

  static String time(Instant moment) {
    return TIME.format(moment);
  }

  /** Never more than is known: a name that was typed is no proof. */
  static String who(Author author, Wording wording) {
    return wording.text("audit.who." + author.standing().code(), author.name());
  }

  private static String what(Change change, Wording wording) {
    JsonNode shown = tree(change.after() == null ? change.before() : change.after());
    JsonNode choice = shown.path("choice");
    return wording.text(
        "audit.what." + change.subject().code() + "." + change.action().code(),
        change.id(),
        switch (change.subject()) {
          case JOB, BATCH, ACCOUNT, TOKEN -> shown.path("name").asText();
          case RANGE -> shown.path("origin").asText();
          case EVERYTHING -> time(Instant.parse(shown.path("backup").asText()));
        },
        choice.path("count").asText() + " × " + choice.path("partNumber").asText(),
        choice.path("sets").asText(),
        choice.path("spares").asText());
  }

  private static String thing(Change change) {
    boolean gone = change.action() == Action.REMOVED;
    return switch (change.subject()) {
      case JOB -> gone ? "" : "/jobs/" + change.id();
      case RANGE, EVERYTHING -> "/stock/revisions/" + change.id();
      case BATCH -> gone ? "" : "/batches/" + change.id();
      case ACCOUNT -> "/accounts";
      case TOKEN -> "";
    };
  }

  static JsonNode tree(String json) {
    return json == null ? MissingNode.getInstance() : JsonText.tree(json);
  }
}
