package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.BiFunction;

/** A list of equal objects as a text field holds it: a line each, cells with commas between. */
public final class FlatTable {

  /** As typed or as pasted from a spreadsheet. */
  private static final String BETWEEN = "[,;\\s]+";

  private FlatTable() {}

  /** The text of a list. */
  public static String text(JsonNode list) {
    StringJoiner lines = new StringJoiner("\n");
    for (JsonNode row : list) {
      StringJoiner cells = new StringJoiner(",");
      for (JsonNode cell : row) {
        if (cell.isArray()) {
          cell.forEach(each -> cells.add(each.asText()));
        } else {
          cells.add(cell.asText());
        }
      }
      lines.add(cells.toString());
    }
    return lines.toString();
  }

  /**
   * The list of a text; a first line that names the columns is passed over.
   *
   * @param row what a line is
   * @param cell what a text in a field of some kind is
   */
  static ArrayNode rows(Shape row, String text, BiFunction<Kind, String, JsonNode> cell) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    List<Field> fields = List.copyOf(row.fields().values());
    for (Iterator<String> lines = text.lines().iterator(); lines.hasNext(); ) {
      String line = lines.next().strip();
      // Whatever is too much stays in the last cell, which will not be a number then.
      String[] cells = line.split(BETWEEN, fields.stream().mapToInt(FlatTable::cells).sum());
      if (line.isEmpty() || list.isEmpty() && cells[0].equals(fields.get(0).name())) {
        continue;
      }
      ObjectNode object = list.addObject();
      int next = 0;
      for (Field field : fields) {
        if (field.kind() instanceof Kind.Many many) {
          ArrayNode several = object.putArray(field.name());
          for (int i = 0; i < cells(field) && next < cells.length; i++) {
            several.add(cell.apply(many.of(), cells[next++]));
          }
        } else if (next < cells.length) {
          object.set(field.name(), cell.apply(field.kind(), cells[next++]));
        }
      }
    }
    return list;
  }

  /**
   * The same text with its cells written otherwise; a line that names the columns stays.
   *
   * @param row what a line is
   * @param cell another text for one in a field of some kind
   */
  public static String rewritten(Shape row, String text, BiFunction<Kind, String, String> cell) {
    List<Kind> kinds = new ArrayList<>();
    for (Field field : row.fields().values()) {
      Kind kind = field.kind() instanceof Kind.Many many ? many.of() : field.kind();
      kinds.addAll(Collections.nCopies(cells(field), kind));
    }
    StringJoiner lines = new StringJoiner("\n");
    for (String line : text.lines().toList()) {
      String[] cells = line.strip().split(BETWEEN, kinds.size());
      for (int i = 0; i < cells.length; i++) {
        cells[i] = cell.apply(kinds.get(i), cells[i]);
      }
      lines.add(String.join(",", cells));
    }
    return lines.toString();
  }

  /** A list in a line has as many cells as it may have entries. */
  private static int cells(Field field) {
    return field.kind() instanceof Kind.Many many ? many.most() : 1;
  }
}
