package org.staywright.form.table;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;

/** One page of a list as JSON. */
public final class PageJson {

  private PageJson() {}

  /** The page a query asks for of a whole list. */
  public static <T> ObjectNode of(JsonNode query, List<T> all, Function<T, ObjectNode> item) {
    long from = Math.min(all.size(), (long) page(query) * size(query));
    long to = Math.min(all.size(), from + size(query));
    return of(query, all.size(), all.subList((int) from, (int) to), item);
  }

  /** A page already cut out. */
  public static <T> ObjectNode of(
      JsonNode query, long total, List<T> rows, Function<T, ObjectNode> item) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("total", total);
    json.put("page", page(query));
    json.put("size", size(query));
    ArrayNode items = json.putArray("items");
    rows.forEach(row -> items.add(item.apply(row)));
    return json;
  }

  public static int page(JsonNode query) {
    return query.get("page").intValue();
  }

  public static int size(JsonNode query) {
    return query.get("size").intValue();
  }
}
