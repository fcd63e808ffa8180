package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.staywright.unit.Fault;

/**
 * An object described once: binding, OpenAPI document and HTML form all read this description.
 *
 * @param name of the kind of object
 * @param fields by name, in order
 */
public record Shape(String name, Map<String, Field> fields) implements Kind {

  public static Shape of(String name, Field... fields) {
    Map<String, Field> byName = new LinkedHashMap<>();
    for (Field field : fields) {
      byName.put(field.name(), field);
    }
    return new Shape(name, byName);
  }

  /** A field by its dotted name, {@code load.massKg}; of an entry of a list by its index too. */
  public Optional<Field> field(String dotted) {
    int dot = dotted.indexOf('.');
    if (dot < 0) {
      return Optional.ofNullable(fields.get(dotted));
    }
    Field outer = fields.get(dotted.substring(0, dot));
    return outer == null ? Optional.empty() : within(outer.kind(), dotted.substring(dot + 1));
  }

  /** Whether it is a point, which is one field to whoever fills it in. */
  public boolean isPoint() {
    return fields.containsKey("x");
  }

  /** Dotted names of its fields by the group they stand in, both in order. */
  public SortedMap<Group, List<String>> groups() {
    SortedMap<Group, List<String>> groups = new TreeMap<>(Comparator.comparing(Group::ordinal));
    group("", null, groups);
    groups.forEach(
        (group, names) -> names.sort(Comparator.comparing(name -> place(name, group.first()))));
    return groups;
  }

  private void group(String prefix, @Nullable Group outer, Map<Group, List<String>> groups) {
    for (Field field : fields.values()) {
      String name = prefix + field.name();
      Group group = field.group() == null ? outer : field.group();
      if (field.kind() instanceof Shape inner && !inner.isPoint()) {
        inner.group(name + ".", group, groups);
      } else if (group != null) {
        groups.computeIfAbsent(group, any -> new ArrayList<>()).add(name);
      }
    }
  }

  private static int place(String name, List<String> first) {
    for (int i = 0; i < first.size(); i++) {
      if ((name + '.').startsWith(first.get(i) + '.')) {
        return i;
      }
    }
    return first.size();
  }

  private static Optional<Field> within(Kind kind, String inner) {
    if (kind instanceof Variants variants) {
      return variants.shapes().stream().flatMap(s -> s.field(inner).stream()).findFirst();
    }
    if (kind instanceof Many many && many.of() instanceof Shape entry && !many.tabular()) {
      int dot = inner.indexOf('.');
      boolean there = dot > 0 && many.hasRoomFor(inner.substring(0, dot));
      return there ? entry.field(inner.substring(dot + 1)) : Optional.empty();
    }
    return kind instanceof Shape shape ? shape.field(inner) : Optional.empty();
  }

  /**
   * The object with its defaults filled in and null for what is absent without one. What is at
   * fault is left out, so that checks across fields can pass over it.
   */
  @Override
  public JsonNode read(JsonNode node, String at, List<Fault> faults) {
    if (!node.isObject()) {
      faults.add(new Fault(at, Pointer.shown(node), "{ }", "not-an-object"));
      return null;
    }
    ObjectNode kept = JsonNodeFactory.instance.objectNode();
    for (Field field : fields.values()) {
      JsonNode given = node.get(field.name());
      boolean absent = given == null || given.isNull();
      String place = Pointer.of(at, field.name());
      if (absent && field.required()) {
        faults.add(new Fault(place, null, expected(field.kind()), "missing"));
      } else if (absent && field.fallback() == null) {
        if (!(field.kind() instanceof Later)) {
          kept.putNull(field.name());
        }
      } else {
        JsonNode value = field.kind().read(absent ? field.fallback() : given, place, faults);
        if (value != null) {
          kept.set(field.name(), value);
        }
      }
    }
    node.properties().stream()
        .filter(member -> !fields.containsKey(member.getKey()))
        .forEach(
            member ->
                faults.add(
                    new Fault(
                        Pointer.of(at, member.getKey()),
                        Pointer.shown(member.getValue()),
                        String.join(", ", fields.keySet()),
                        "unknown-field")));
    return kept;
  }

  private static String expected(Kind kind) {
    if (kind instanceof Amount amount) {
      return amount.bound().text();
    }
    if (kind instanceof Whole whole) {
      return whole.bound().text();
    }
    if (kind instanceof Text text) {
      return text.bound();
    }
    if (kind instanceof Choice choice) {
      return String.join(" | ", choice.words());
    }
    return kind instanceof Shape shape
        ? "{" + String.join(", ", shape.fields.keySet()) + "}"
        : "{ }";
  }
}
