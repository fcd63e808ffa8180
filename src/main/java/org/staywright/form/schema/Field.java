package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.jspecify.annotations.Nullable;

/**
 * A member of an object.
 *
 * @param name with its unit
 * @param kind what it may hold
 * @param required whether it must be there
 * @param fallback what stands for it where it is absent, null for nothing
 * @param group it stands in where it is asked for, null for that of the object it is in
 */
public record Field(
    String name, Kind kind, boolean required, JsonNode fallback, @Nullable Group group) {

  private static final ObjectMapper JSON = new ObjectMapper();

  public static Field required(String name, Kind kind) {
    return new Field(name, kind, true, null, null);
  }

  public static Field optional(String name, Kind kind) {
    return new Field(name, kind, false, null, null);
  }

  public static Field withDefault(String name, Kind kind, Object fallback) {
    return new Field(name, kind, false, JSON.valueToTree(fallback), null);
  }

  /** An object that may be left out because all in it has defaults. */
  public static Field withDefaults(String name, Shape shape) {
    return new Field(name, shape, false, JSON.createObjectNode(), null);
  }

  /** The same in a group of a form. */
  public Field in(Group group) {
    return new Field(name, kind, required, fallback, group);
  }
}
