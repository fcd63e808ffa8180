package org.staywright.web.audit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.staywright.database.Change;
import org.staywright.wording.Wording;

/**
 * An entry that is otherwise after a change than before.
 *
 * @param label in words, "" where it has none
 * @param name as the interface calls it, units included
 * @param before the change, "" where there was none
 * @param after the change, likewise
 */
public record Difference(String label, String name, String before, String after) {

  /** All there are: every entry of what was added or removed. */
  static List<Difference> of(Change change, Wording wording) {
    Map<String, String> before = entries(ChangeRow.tree(change.before()));
    Map<String, String> after = entries(ChangeRow.tree(change.after()));
    Set<String> names = new LinkedHashSet<>(before.keySet());
    names.addAll(after.keySet());
    return names.stream()
        .map(
            name ->
                new Difference(
                    label(name, wording),
                    name,
                    before.getOrDefault(name, ""),
                    after.getOrDefault(name, "")))
        .filter(each -> !each.before.equals(each.after))
        .toList();
  }

  private static Map<String, String> entries(JsonNode tree) {
    Map<String, String> entries = new LinkedHashMap<>();
    collect("", tree, entries);
    return entries;
  }

  private static void collect(String name, JsonNode node, Map<String, String> entries) {
    String prefix = name.isEmpty() ? "" : name + ".";
    if (node.isObject()) {
      node.properties().forEach(each -> collect(prefix + each.getKey(), each.getValue(), entries));
    } else if (node.isArray() && node.path(0).isContainerNode()) {
      for (int i = 0; i < node.size(); i++) {
        collect(prefix + (i + 1), node.get(i), entries);
      }
    } else if (node.isArray()) {
      entries.put(
          name,
          StreamSupport.stream(node.spliterator(), false)
              .map(JsonNode::asText)
              .collect(Collectors.joining(", ")));
    } else if (node.isValueNode() && !node.isNull()) {
      entries.put(name, node.asText());
    }
  }

  private static String label(String name, Wording wording) {
    String key = "field." + name.replaceAll("\\.\\d+", "");
    return wording.knows(key) ? wording.text(key) : "";
  }
}
