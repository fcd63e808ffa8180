package org.staywright.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.staywright.form.schema.JsonText;
import org.staywright.job.order.Choice;

/** A saved job as JSON: the job and what was added when it was saved. */
public final class JobJson {

  /** What a client gets but does not set. */
  private static final List<String> READ_ONLY = List.of("id", "created", "changed", "choice");

  private JobJson() {}

  public static ObjectNode of(SavedJob saved) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", saved.id);
    json.put("created", saved.created.toString());
    json.put("changed", saved.changed.toString());
    json.setAll((ObjectNode) Jobs.document(saved));
    json.set("choice", saved.choice == null ? json.nullNode() : choice(saved.choice));
    return json;
  }

  private static JsonNode choice(Choice choice) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("partNumber", choice.part());
    json.put("count", choice.count());
    if (choice.fitted()) {
      json.putObject("fittings")
          .put("rodEnd", choice.rodFitting())
          .put("tubeEnd", choice.tubeFitting());
    }
    json.put("rodEndAt", choice.rodEndAt().name().toLowerCase(Locale.ROOT));
    json.put("sets", choice.sets());
    json.put("spares", choice.spares());
    json.put("brackets", choice.brackets());
    json.put("evenIfMisfit", choice.despite());
    json.put("stockRevision", choice.revision());
    json.put("made", choice.made().toString());
    return json;
  }

  /** A body without what only we set, so that a client may send back what it got. */
  public static JsonText writable(JsonText body) {
    return body.tree() instanceof ObjectNode object
        ? new JsonText(object.deepCopy().without(READ_ONLY), body.repeated())
        : body;
  }
}
