package org.staywright.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Unreadable;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * The first entry of a backup: what it is and what it holds.
 *
 * @param columns of each table, in the order of the values in its rows
 */
record Manifest(Contents contents, Map<String, List<String>> columns) {

  static final String ENTRY = "manifest.json";

  /** Far more than it ever has. */
  static final int LONGEST = 1 << 16;

  private static final String FORMAT = "staywright-backup-1";

  static String entry(String table) {
    return table + ".jsonl";
  }

  static void write(OutputStream to, Contents contents, List<StoredTable> tables)
      throws IOException {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("format", FORMAT).put("created", contents.created().toString());
    json.put("schema", contents.schema());
    ObjectNode all = json.putObject("tables");
    for (StoredTable table : tables) {
      ObjectNode each = all.putObject(table.name());
      each.put("rows", contents.rows().get(table.name()));
      ArrayNode columns = each.putArray("columns");
      table.columns().keySet().forEach(columns::add);
    }
    to.write(json.toPrettyString().getBytes(StandardCharsets.UTF_8));
  }

  /** What a manifest says; whether that suits the database is another question. */
  static Manifest read(byte[] text) {
    JsonNode json;
    Instant created;
    try {
      json = JsonText.read(text).tree();
      created = Instant.parse(json.path("created").asText());
    } catch (Unreadable | DateTimeException otherwise) {
      throw notOurs(null);
    }
    String format = json.path("format").asText();
    if (!format.equals(FORMAT)) {
      throw notOurs(format);
    }
    Map<String, Long> rows = new LinkedHashMap<>();
    Map<String, List<String>> columns = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> table : json.path("tables").properties()) {
      rows.put(table.getKey(), table.getValue().path("rows").asLong(-1));
      List<String> names = new ArrayList<>();
      table.getValue().path("columns").forEach(name -> names.add(name.asText()));
      columns.put(table.getKey(), names);
    }
    return new Manifest(new Contents(created, json.path("schema").asText(), rows), columns);
  }

  private static Refusal notOurs(String format) {
    return new Refusal(new Fault(ENTRY, format, FORMAT, "not-a-backup"));
  }
}
