package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.staywright.unit.Refusal;
import org.staywright.unit.TypedNumber;
import org.staywright.unit.Unit;

/**
 * Dotted names with texts, as HTML forms, queries and CSV rows have them, to a tree for a shape and
 * back. Text that is not what the shape wants stays text, so that the shape reports it.
 */
public final class FlatForm {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  /** No number anyone means is longer. */
  private static final int LONGEST_NUMBER = 40;

  /** Whether numbers may be written in words of their own: units, sums, commas. */
  private final boolean freely;

  private FlatForm(boolean freely) {
    this.freely = freely;
  }

  /**
   * @param shape of the tree
   * @param values by dotted name; empty text is as good as absent
   */
  public static ObjectNode tree(Shape shape, Map<String, List<String>> values) {
    return new FlatForm(false).read(shape, values);
  }

  /** The same of a page's fields, which take {@link TypedNumber}s. */
  public static ObjectNode typed(Shape shape, Map<String, List<String>> values) {
    return new FlatForm(true).read(shape, values);
  }

  /** The other way: texts by dotted name; nothing for null. */
  public static Map<String, List<String>> texts(Shape shape, JsonNode tree) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    flatten(shape, "", tree, values);
    return values;
  }

  private static void flatten(
      Shape shape, String name, JsonNode node, Map<String, List<String>> values) {
    String prefix = name.isEmpty() ? "" : name + ".";
    Kind kind = shape.field(name).map(Field::kind).orElse(null);
    if (node.isObject()) {
      node.properties().forEach(e -> flatten(shape, prefix + e.getKey(), e.getValue(), values));
    } else if (kind instanceof Kind.Many many && many.of() instanceof Shape && !many.tabular()) {
      for (int i = 0; i < node.size(); i++) {
        flatten(shape, prefix + i, node.get(i), values);
      }
    } else if (!node.isNull()) {
      values.put(name, texts(node));
    }
  }

  /** Of one field. */
  public static List<String> texts(JsonNode value) {
    if (!value.isArray()) {
      return List.of(text(value));
    }
    if (value.path(0).isObject()) {
      return List.of(FlatTable.text(value));
    }
    List<String> texts = new ArrayList<>();
    value.forEach(each -> texts.add(text(each)));
    return texts;
  }

  /** As it was written; what nobody wrote, a double, as short as it is. */
  private static String text(JsonNode value) {
    return value.isDouble()
        ? value.decimalValue().stripTrailingZeros().toPlainString()
        : value.asText();
  }

  private ObjectNode read(Shape shape, Map<String, List<String>> values) {
    ObjectNode tree = NODES.objectNode();
    values.forEach(
        (name, texts) -> {
          List<String> given = texts.stream().map(String::strip).filter(t -> !t.isEmpty()).toList();
          if (!given.isEmpty()) {
            put(tree, shape, name, given);
          }
        });
    return tree;
  }

  private void put(ObjectNode tree, Shape shape, String name, List<String> texts) {
    Optional<Field> field = shape.field(name);
    if (field.isEmpty()) {
      // An unknown name stays whole, however many dots it has: the shape will not know it.
      tree.set(name, several(new Kind.Later(), texts));
      return;
    }
    ObjectNode parent = tree;
    String[] steps = name.split("\\.");
    for (int i = 0; i < steps.length - 1; i++) {
      JsonNode next = parent.get(steps[i]);
      if (Character.isDigit(steps[i + 1].charAt(0))) {
        ArrayNode list = next instanceof ArrayNode array ? array : parent.putArray(steps[i]);
        parent = entry(list, Integer.parseInt(steps[++i]));
      } else {
        parent = next instanceof ObjectNode object ? object : parent.putObject(steps[i]);
      }
    }
    String last = steps[steps.length - 1];
    if (!parent.has(last)) {
      parent.set(last, several(field.get().kind(), texts));
    }
  }

  /** One that is passed over is there and empty, so that it is missed where it stands. */
  private static ObjectNode entry(ArrayNode list, int index) {
    while (list.size() <= index) {
      list.addObject();
    }
    return (ObjectNode) list.get(index);
  }

  private JsonNode several(Kind kind, List<String> texts) {
    if (kind instanceof Kind.Many many && many.of() instanceof Shape row && many.tabular()) {
      return FlatTable.rows(row, String.join("\n", texts), this::one);
    }
    Kind entry =
        kind instanceof Kind.Listing listing
            ? listing.of()
            : kind instanceof Kind.Many many ? many.of() : null;
    if (entry != null && !(entry instanceof Shape)) {
      ArrayNode list = NODES.arrayNode();
      for (String text : texts) {
        for (String each : text.split("[,;\\s]+")) {
          list.add(one(entry, each));
        }
      }
      return list;
    }
    if (texts.size() > 1) {
      ArrayNode list = NODES.arrayNode();
      texts.forEach(list::add);
      return list;
    }
    return one(kind, texts.get(0));
  }

  private JsonNode one(Kind kind, String text) {
    if (kind instanceof Kind.Amount amount) {
      return freely ? number(text, amount.unit()) : plain(text);
    }
    if (kind instanceof Kind.Whole) {
      return freely ? number(text, null) : plain(text);
    }
    if (kind instanceof Kind.Flag) {
      return switch (text) {
        case "true", "on" -> NODES.booleanNode(true);
        case "false" -> NODES.booleanNode(false);
        default -> NODES.textNode(text);
      };
    }
    return NODES.textNode(text);
  }

  private static JsonNode number(String text, Unit unit) {
    try {
      return NODES.numberNode(TypedNumber.read(text, unit, unit, false));
    } catch (Refusal refusal) {
      return NODES.pojoNode(refusal.faults().get(0));
    }
  }

  private static JsonNode plain(String text) {
    try {
      return text.length() > LONGEST_NUMBER
          ? NODES.textNode(text)
          : NODES.numberNode(new BigDecimal(text.replace('−', '-')));
    } catch (NumberFormatException e) {
      return NODES.textNode(text);
    }
  }
}
