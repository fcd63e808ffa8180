package org.staywright.web.query;

import static org.staywright.unit.Unit.MILLIMETRE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.mounts.Room;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.form.job.JobForm;
import org.staywright.part.Range;
import org.staywright.unit.Refusal;
import org.staywright.web.shell.Address;

/** The zones in a query. */
public final class ZonesQuery {

  private static final String ZONES = "zones.";

  private ZonesQuery() {}

  /** The same query; where it has no zones, those that its geometry gives to begin with. */
  public static JobQuery filled(JobQuery query, Range range) {
    try {
      return JobForm.read(query.tree(), range)
          .mechanism()
          .rigid()
          .map(load -> filled(query, Room.of(load)))
          .orElse(query);
    } catch (Refusal unsound) {
      return query;
    }
  }

  private static JobQuery filled(JobQuery query, Zones room) {
    Map<String, List<String>> spans = new LinkedHashMap<>();
    put(spans, "frameMm", room.frame());
    put(spans, "movingMm", room.moving());
    JobQuery filled = query;
    for (Map.Entry<String, List<String>> span : spans.entrySet()) {
      boolean given = query.values().containsKey(span.getKey());
      filled = given ? filled : filled.with(span.getKey(), span.getValue());
    }
    return filled;
  }

  private static void put(Map<String, List<String>> spans, String mount, Zone zone) {
    spans.put(ZONES + mount + ".x", List.of(millimetres(zone.left()), millimetres(zone.right())));
    spans.put(ZONES + mount + ".y", List.of(millimetres(zone.bottom()), millimetres(zone.top())));
  }

  private static String millimetres(double metres) {
    return Long.toString(Math.round(MILLIMETRE.of(metres)));
  }

  /** What the form of the zones does not show itself. */
  public static Map<String, List<String>> without(JobQuery query) {
    Map<String, List<String>> rest = new LinkedHashMap<>(query.values());
    rest.keySet().removeIf(name -> name.startsWith(ZONES) || name.equals("rankBy"));
    rest.put(JobQuery.SAVED, List.of(query.saved()));
    return rest;
  }

  public static List<JobQuery.Pair> pairs(Map<String, List<String>> values) {
    return values.entrySet().stream()
        .flatMap(e -> e.getValue().stream().map(value -> new JobQuery.Pair(e.getKey(), value)))
        .filter(pair -> !pair.value().isEmpty())
        .toList();
  }

  public static String address(String path, JobQuery query) {
    Map<String, List<String>> all = new LinkedHashMap<>(query.values());
    all.put(JobQuery.SAVED, List.of(query.saved()));
    return new Address(path, all).toString();
  }
}
