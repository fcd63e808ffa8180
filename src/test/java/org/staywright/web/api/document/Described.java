package org.staywright.web.api.document;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.staywright.form.schema.JsonText;
import org.staywright.web.api.request.Problem;

/**
 * Answers held to what the served document says of them, as JSON Schema (2020-12) has the words
 * that are used there.
 */
public final class Described {

  /** What stands in schemas; a word that is not looked at here would be kept by chance. */
  private static final Set<String> WORDS =
      Set.of(
          "$ref",
          "type",
          "enum",
          "pattern",
          "maxLength",
          "minimum",
          "maximum",
          "exclusiveMinimum",
          "exclusiveMaximum",
          "items",
          "minItems",
          "maxItems",
          "uniqueItems",
          "properties",
          "required",
          "additionalProperties",
          "anyOf",
          "oneOf",
          "description",
          "default",
          "format");

  private final JsonNode document;
  private final JsonNode inlined;

  Described(JsonNode document) {
    this.document = document;
    this.inlined = inlined(document);
  }

  /** By the document that the running program serves. */
  public static Described served() {
    byte[] text =
        given().get("/q/openapi?format=json").then().statusCode(200).extract().asByteArray();
    return new Described(JsonText.read(text).tree());
  }

  /** The document with everything in place that it refers to. */
  JsonNode document() {
    return inlined;
  }

  /** An answer in JSON, after it was found to be as described. */
  public JsonNode conforming(Response answer, String method, String path) {
    JsonNode value = JsonText.read(answer.asByteArray()).tree();
    JsonNode schema = answer(method, path, answer.statusCode());
    assertEquals(List.of(), flaws(value, schema), answer::asString);
    return value;
  }

  /** The schema of an answer. */
  JsonNode answer(String method, String path, int status) {
    JsonNode schema =
        inlined
            .at("/paths")
            .path(path)
            .path(method.toLowerCase(Locale.ROOT))
            .at("/responses/" + status + "/content")
            .path(status < 400 ? "application/json" : Problem.TYPE)
            .path("schema");
    assertFalse(schema.isMissingNode(), method + " " + path + " " + status);
    return schema;
  }

  /** Where and how a value is not as a schema has it. */
  List<String> flaws(JsonNode value, JsonNode schema) {
    List<String> flaws = new ArrayList<>();
    check(value, schema, "#", flaws);
    return flaws;
  }

  /** A schema with everything in it that it refers to. */
  private JsonNode inlined(JsonNode schema) {
    if (schema instanceof ArrayNode list) {
      ArrayNode all = list.arrayNode();
      list.forEach(each -> all.add(inlined(each)));
      return all;
    }
    if (!(schema instanceof ObjectNode object)) {
      return schema;
    }
    ObjectNode all = object.objectNode();
    Set<String> placed = new HashSet<>(Set.of("$ref"));
    if (object.has("$ref")) {
      all.setAll((ObjectNode) inlined(referred(object)));
    }
    JsonNode either = object.path("anyOf");
    if (either.size() == 2 && either.get(1).path("type").asText().equals("null")) {
      all.setAll(orNull((ObjectNode) inlined(either.get(0))));
      placed.add("anyOf");
    }
    object.properties().stream()
        .filter(each -> !placed.contains(each.getKey()))
        .forEach(each -> all.set(each.getKey(), inlined(each.getValue())));
    return all;
  }

  /** The same schema, null allowed in it. */
  private static ObjectNode orNull(ObjectNode schema) {
    if (schema.has("type")) {
      String type = schema.get("type").textValue();
      schema.putArray("type").add(type).add("null");
    }
    if (schema.get("enum") instanceof ArrayNode words) {
      words.addNull();
    }
    return schema;
  }

  private JsonNode referred(JsonNode schema) {
    JsonNode there = document.at(schema.get("$ref").textValue().substring(1));
    if (there.isMissingNode()) {
      throw new AssertionError("nothing at " + schema);
    }
    return there;
  }

  private void check(JsonNode value, JsonNode schema, String at, List<String> flaws) {
    schema
        .fieldNames()
        .forEachRemaining(
            word -> {
              if (!WORDS.contains(word)) {
                throw new AssertionError(at + ": " + word + " is not known here");
              }
            });
    if (schema.has("$ref")) {
      check(value, referred(schema), at, flaws);
    }
    for (String word : List.of("anyOf", "oneOf")) {
      if (schema.has(word)) {
        long fitting =
            stream(schema.get(word)).filter(each -> flaws(value, each).isEmpty()).count();
        if (fitting == 0 || word.equals("oneOf") && fitting > 1) {
          flaws.add(at + ": " + fitting + " of " + word + " fit " + value);
        }
      }
    }
    if (schema.has("type") && named(schema.get("type")).noneMatch(type -> is(value, type))) {
      flaws.add(at + ": " + value + " is no " + schema.get("type"));
      return;
    }
    if (schema.has("enum") && stream(schema.get("enum")).noneMatch(value::equals)) {
      flaws.add(at + ": " + value + " is none of " + schema.get("enum"));
    }
    if (value.isTextual()) {
      text(value.textValue(), schema, at, flaws);
    } else if (value.isNumber()) {
      number(value.doubleValue(), schema, at, flaws);
    } else if (value.isArray()) {
      list(value, schema, at, flaws);
    } else if (value.isObject()) {
      object(value, schema, at, flaws);
    }
  }

  private static void text(String value, JsonNode schema, String at, List<String> flaws) {
    if (schema.has("pattern") && !value.matches(".*" + schema.get("pattern").textValue() + ".*")) {
      flaws.add(at + ": " + value + " is not of the form " + schema.get("pattern"));
    }
    if (schema.has("maxLength") && value.length() > schema.get("maxLength").intValue()) {
      flaws.add(at + ": " + value + " is too long");
    }
  }

  private static void number(double value, JsonNode schema, String at, List<String> flaws) {
    boolean low = schema.has("minimum") && value < schema.get("minimum").doubleValue();
    boolean high = schema.has("maximum") && value > schema.get("maximum").doubleValue();
    boolean on =
        schema.has("exclusiveMinimum") && value <= schema.get("exclusiveMinimum").doubleValue()
            || schema.has("exclusiveMaximum")
                && value >= schema.get("exclusiveMaximum").doubleValue();
    if (low || high || on) {
      flaws.add(at + ": " + value + " is out of bounds");
    }
  }

  private void list(JsonNode value, JsonNode schema, String at, List<String> flaws) {
    boolean few = schema.has("minItems") && value.size() < schema.get("minItems").intValue();
    boolean many = schema.has("maxItems") && value.size() > schema.get("maxItems").intValue();
    boolean twice = schema.has("uniqueItems") && stream(value).distinct().count() < value.size();
    if (few || many || twice) {
      flaws.add(at + ": " + value.size() + " entries, or the same twice");
    }
    if (schema.has("items")) {
      for (int i = 0; i < value.size(); i++) {
        check(value.get(i), schema.get("items"), at + "/" + i, flaws);
      }
    }
  }

  private void object(JsonNode value, JsonNode schema, String at, List<String> flaws) {
    named(schema.path("required"))
        .filter(name -> !value.has(name))
        .forEach(name -> flaws.add(at + "/" + name + " is missing"));
    JsonNode others = schema.path("additionalProperties");
    for (var member : value.properties()) {
      String place = at + "/" + member.getKey();
      JsonNode known = schema.path("properties").path(member.getKey());
      if (!known.isMissingNode()) {
        check(member.getValue(), known, place, flaws);
      } else if (others.isObject()) {
        check(member.getValue(), others, place, flaws);
      } else if (others.isBoolean() && !others.booleanValue()) {
        flaws.add(place + " is not described");
      }
    }
  }

  private static boolean is(JsonNode value, String type) {
    return switch (type) {
      case "null" -> value.isNull();
      case "string" -> value.isTextual();
      case "number" -> value.isNumber();
      case "integer" -> value.isNumber() && value.doubleValue() == Math.rint(value.doubleValue());
      case "boolean" -> value.isBoolean();
      case "array" -> value.isArray();
      case "object" -> value.isObject();
      default -> throw new AssertionError(type);
    };
  }

  /** One name or several. */
  private static Stream<String> named(JsonNode names) {
    return names.isTextual()
        ? Stream.of(names.textValue())
        : stream(names).map(JsonNode::textValue);
  }

  private static Stream<JsonNode> stream(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false);
  }
}
