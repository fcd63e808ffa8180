package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;

/** Where a value stands in a document and how it is shown in a fault. */
public final class Pointer {

  /** Longer values are cut in a fault: its reader has the whole one. */
  private static final int LONGEST = 200;

  private Pointer() {}

  /** The JSON pointer (RFC 6901) of a member. */
  static String of(String parent, String name) {
    return parent + "/" + cut(name).replace("~", "~0").replace("/", "~1");
  }

  /** A value as a fault carries it: text, number or truth, anything else as JSON. */
  public static Object shown(JsonNode node) {
    if (node.isNumber()) {
      return node.numberValue();
    }
    if (node.isBoolean()) {
      return node.booleanValue();
    }
    if (node.isTextual()) {
      return cut(node.textValue());
    }
    String json = node.toString();
    return node.isNull() ? null : json.length() <= LONGEST ? node : cut(json);
  }

  private static String cut(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
  }
}
