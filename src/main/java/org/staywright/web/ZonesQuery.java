package org.staywright.web;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The zones in a query. */
final class ZonesQuery {

  private static final String ZONES = "zones.";

  /** A zone to begin with reaches so far around the mount as it is, mm. */
  private static final BigDecimal AROUND = new BigDecimal(100);

  private ZonesQuery() {}

  /** The same query; where it has no zones, those around its mounts. */
  static JobQuery filled(JobQuery query) {
    JobQuery filled = query;
    for (String mount : List.of("frameMm", "movingMm")) {
      for (String axis : List.of(".x", ".y")) {
        if (!query.values().containsKey(ZONES + mount + axis)) {
          filled = filled.with(ZONES + mount + axis, around(query, "mounts." + mount + axis));
        }
      }
    }
    return filled;
  }

  private static List<String> around(JobQuery query, String coordinate) {
    BigDecimal middle;
    try {
      middle = new BigDecimal(query.values().getOrDefault(coordinate, List.of("0")).get(0).strip());
    } catch (NumberFormatException unreadable) {
      middle = BigDecimal.ZERO;
    }
    return List.of(middle.subtract(AROUND).toPlainString(), middle.add(AROUND).toPlainString());
  }

  /** What the form of the zones does not show itself. */
  static Map<String, List<String>> without(JobQuery query) {
    Map<String, List<String>> rest = new LinkedHashMap<>(query.values());
    rest.keySet().removeIf(name -> name.startsWith(ZONES) || name.equals("rankBy"));
    rest.put(JobQuery.SAVED, List.of(query.saved()));
    return rest;
  }

  static List<JobQuery.Pair> pairs(Map<String, List<String>> values) {
    return values.entrySet().stream()
        .flatMap(e -> e.getValue().stream().map(value -> new JobQuery.Pair(e.getKey(), value)))
        .filter(pair -> !pair.value().isEmpty())
        .toList();
  }

  static String address(String path, JobQuery query) {
    Map<String, List<String>> all = new LinkedHashMap<>(query.values());
    all.put(JobQuery.SAVED, List.of(query.saved()));
    return new Address(path, all).toString();
  }
}
