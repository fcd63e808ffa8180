package org.staywright.web.shell;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A page with its query.
 *
 * @param path without a query
 * @param values of the query by name
 */
public record Address(String path, Map<String, List<String>> values) {

  public Address with(String name, Object value) {
    Map<String, List<String>> more = new LinkedHashMap<>(values);
    more.put(name, List.of(String.valueOf(value)));
    return new Address(path, more);
  }

  /** Empty values are left out. */
  @Override
  public String toString() {
    String query =
        values.entrySet().stream()
            .flatMap(e -> e.getValue().stream().filter(v -> !v.isEmpty()).map(v -> pair(e, v)))
            .collect(Collectors.joining("&"));
    return query.isEmpty() ? path : path + '?' + query;
  }

  private static String pair(Map.Entry<String, List<String>> entry, String value) {
    return encoded(entry.getKey()) + '=' + encoded(value);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
