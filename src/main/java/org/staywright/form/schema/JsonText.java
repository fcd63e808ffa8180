package org.staywright.form.schema;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.staywright.unit.Fault;

/**
 * A body read strictly by RFC 8259: one value, nothing after it, no NaN. A key that comes twice can
 * be read, but is a fault at its place.
 *
 * @param tree what it says, the first of repeated keys kept
 * @param repeated a fault for each key that came again
 */
public record JsonText(JsonNode tree, List<Fault> repeated) {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final JsonFactory READER =
      JsonFactory.builder()
          .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(64).build())
          .build();

  public JsonText {
    repeated = List.copyOf(repeated);
  }

  public static JsonText read(byte[] body) {
    try (JsonParser parser = READER.createParser(body)) {
      try {
        List<Fault> repeated = new ArrayList<>();
        JsonToken first = parser.nextToken();
        if (first == null) {
          throw new Unreadable(1, 1);
        }
        JsonNode tree = value(parser, first, "#", repeated);
        if (parser.nextToken() != null) {
          throw unreadable(parser.currentTokenLocation());
        }
        return new JsonText(tree, repeated);
      } catch (IOException e) {
        throw unreadable(parser.currentLocation());
      }
    } catch (IOException e) {
      throw new Unreadable(1, 1);
    }
  }

  /** Of what was kept as text, the first of repeated keys. */
  public static JsonNode tree(String text) {
    return read(text.getBytes(StandardCharsets.UTF_8)).tree();
  }

  private static JsonNode value(JsonParser parser, JsonToken token, String at, List<Fault> repeated)
      throws IOException {
    return switch (token) {
      case START_OBJECT -> object(parser, at, repeated);
      case START_ARRAY -> array(parser, at, repeated);
      case VALUE_STRING -> NODES.textNode(parser.getText());
      case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDecimalValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      case VALUE_NULL -> NODES.nullNode();
      default -> throw unreadable(parser.currentLocation());
    };
  }

  private static ObjectNode object(JsonParser parser, String at, List<Fault> repeated)
      throws IOException {
    ObjectNode object = NODES.objectNode();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_OBJECT; t = parser.nextToken()) {
      if (t == null) {
        throw unreadable(parser.currentLocation());
      }
      String name = parser.currentName();
      String place = Pointer.of(at, name);
      JsonNode value = value(parser, parser.nextToken(), place, repeated);
      if (object.has(name)) {
        repeated.add(new Fault(place, Pointer.shown(value), "", "repeated"));
      } else {
        object.set(name, value);
      }
    }
    return object;
  }

  private static ArrayNode array(JsonParser parser, String at, List<Fault> repeated)
      throws IOException {
    ArrayNode array = NODES.arrayNode();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      if (t == null) {
        throw unreadable(parser.currentLocation());
      }
      array.add(value(parser, t, Pointer.of(at, Integer.toString(array.size())), repeated));
    }
    return array;
  }

  private static Unreadable unreadable(JsonLocation where) {
    return new Unreadable(Math.max(1, where.getLineNr()), Math.max(1, where.getColumnNr()));
  }
}
