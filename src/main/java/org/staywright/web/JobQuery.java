package org.staywright.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.FlatForm;
import org.staywright.form.JobShape;
import org.staywright.form.Shape;

/**
 * A job as it travels in a query: dotted names with texts, as typed.
 *
 * @param values of the fields a job has
 * @param saved number of the saved job it came from, "" for none
 */
record JobQuery(Map<String, List<String>> values, String saved) {

  private static final String SAVED = "saved";

  /** One name with one value, as a hidden field carries it. */
  record Pair(String name, String value) {}

  static JobQuery of(Map<String, List<String>> parameters) {
    String saved = parameters.getOrDefault(SAVED, List.of("")).get(0);
    return new JobQuery(known(JobShape.JOB, parameters), saved);
  }

  /** The same job as a document has it. */
  static JobQuery of(JsonNode tree, String saved) {
    return new JobQuery(known(JobShape.JOB, flat(tree)), saved);
  }

  /** What a shape knows; whatever else an address or a form carries is left out. */
  static Map<String, List<String>> known(Shape shape, Map<String, List<String>> parameters) {
    Map<String, List<String>> known = new LinkedHashMap<>();
    parameters.forEach(
        (name, texts) -> {
          if (shape.field(name).isPresent()) {
            known.put(name, List.copyOf(texts));
          }
        });
    return known;
  }

  /** Texts by dotted name; nothing for null. */
  static Map<String, List<String>> flat(JsonNode tree) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    flatten("", tree, values);
    return values;
  }

  private static void flatten(String name, JsonNode node, Map<String, List<String>> values) {
    if (node.isObject()) {
      String prefix = name.isEmpty() ? "" : name + ".";
      node.properties().forEach(e -> flatten(prefix + e.getKey(), e.getValue(), values));
    } else if (node.isArray()) {
      List<String> texts = new ArrayList<>();
      node.forEach(each -> texts.add(each.asText()));
      values.put(name, texts);
    } else if (!node.isNull()) {
      values.put(name, List.of(node.asText()));
    }
  }

  boolean isEmpty() {
    return values.isEmpty();
  }

  ObjectNode tree() {
    return FlatForm.tree(JobShape.JOB, values);
  }

  /** All of it, for a form to carry along unseen. */
  List<Pair> pairs() {
    return all().entrySet().stream()
        .flatMap(e -> e.getValue().stream().map(value -> new Pair(e.getKey(), value)))
        .filter(pair -> !pair.value().isEmpty())
        .toList();
  }

  /** Of the page that shows this job. */
  String address() {
    return new Address("/flap", all()).toString();
  }

  private Map<String, List<String>> all() {
    Map<String, List<String>> all = new LinkedHashMap<>(values);
    all.put(SAVED, List.of(saved));
    return all;
  }
}
