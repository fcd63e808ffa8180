package org.staywright.form.job;

import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/** Rectangles of the side view in which mounts may sit, or may not. */
public final class ZonesShape {

  private static final Many SPAN = new Many(Amount.between(-10_000, 10_000, MILLIMETRE), 2, 2);

  private static final Shape ZONE = Shape.of("zone", required("x", SPAN), required("y", SPAN));

  static final Many KEEP_OUTS = new Many(ZONE, 0, 20);

  public static final Shape ZONES =
      Shape.of(
          "zones",
          required("frameMm", ZONE),
          required("movingMm", ZONE),
          withDefault("keepOutMm", KEEP_OUTS, List.of()),
          withDefault("rodEndAt", Choice.of("frame", "moving", "either"), "either"),
          withDefault("lateralOffsetMm", Amount.between(0, 1000, MILLIMETRE), 0));

  private static final String AT = "/zones";

  private ZonesShape() {}

  /** What is wrong between numbers that are each sound alone. */
  public static List<Fault> faults(JobTree job) {
    List<Fault> faults = new ArrayList<>();
    List<String> places = new ArrayList<>(List.of(AT + "/frameMm", AT + "/movingMm"));
    for (int i = 0; i < job.size(AT + "/keepOutMm"); i++) {
      places.add(AT + "/keepOutMm/" + i);
    }
    for (String place : places) {
      for (String axis : List.of("/x", "/y")) {
        JsonNode span = job.root().at(place + axis);
        boolean sound = span.size() == 2 && span.get(0).isNumber() && span.get(1).isNumber();
        if (sound && span.get(0).doubleValue() > span.get(1).doubleValue()) {
          String bound = "≤ " + span.get(1);
          faults.add(job.fault(place + axis + "/0", bound, "zone-turned-round"));
        }
      }
    }
    if (faults.isEmpty() && places.stream().allMatch(place -> whole(job, place))) {
      for (String place : places.subList(0, 2)) {
        for (String keepOut : places.subList(2, places.size())) {
          if (zone(job, keepOut).holds(zone(job, place))) {
            faults.add(job.fault(keepOut, "", "zone-kept-out"));
          }
        }
      }
    }
    return faults;
  }

  private static boolean whole(JobTree job, String place) {
    return job.size(place + "/x") == 2 && job.size(place + "/y") == 2;
  }

  public static Zones read(JobTree job) {
    List<Zone> keepOut = new ArrayList<>();
    for (int i = 0; i < job.size(AT + "/keepOutMm"); i++) {
      keepOut.add(zone(job, AT + "/keepOutMm/" + i));
    }
    return new Zones(
        zone(job, AT + "/frameMm"),
        zone(job, AT + "/movingMm"),
        keepOut,
        job.si(AT + "/lateralOffsetMm", MILLIMETRE),
        job.rodEnd(AT + "/rodEndAt"));
  }

  private static Zone zone(JobTree job, String at) {
    return new Zone(
        end(job, at + "/x/0"), end(job, at + "/x/1"), end(job, at + "/y/0"), end(job, at + "/y/1"));
  }

  private static double end(JobTree job, String at) {
    return job.si(at, Unit.MILLIMETRE);
  }
}
