package org.staywright.catalog;

import static org.staywright.catalog.Build.area;
import static org.staywright.catalog.Build.ml;
import static org.staywright.catalog.Build.mm;
import static org.staywright.catalog.Build.round;
import static org.staywright.catalog.Build.text;

import java.util.ArrayList;
import java.util.List;
import org.staywright.catalog.SpringSize.Span;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Cylinder;
import org.staywright.spring.Damper;
import org.staywright.spring.Digression;

/** The invented dampers: each way alike, or strong one way and light the other. */
final class DamperPlan {

  private static final int FIRST_SERIAL = 250_000;
  private static final double DEAR = 1.6;

  /** Speed that the damping forces are quoted at, m/s. */
  static final double SPEED = 0.1;

  /** Digression of a plain hole with a valve over it, and the light way's. */
  private static final double STRONG_EXPONENT = 0.6;

  private static final double LIGHT_EXPONENT = 0.9;

  /** The light way over the strong one. */
  private static final double LIGHT = 0.2;

  /** Gauge pressure of the gas apart from the oil, on the rod, N for each mm². */
  private static final double RESERVE_PRESSURE = 1;

  private record Size(
      double rodMm, double tubeMm, double boreMm, String thread, Span forceN, Span strokeMm) {}

  private enum Way {
    BOTH,
    IN,
    OUT
  }

  private static final List<Size> SIZES =
      List.of(
          new Size(6, 15, 12.6, "M6", new Span(100, 315), new Span(40, 125)),
          new Size(8, 22, 19, "M8", new Span(200, 800), new Span(50, 200)),
          new Size(10, 28, 25, "M10", new Span(400, 1600), new Span(80, 315)));

  private DamperPlan() {}

  static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_SERIAL;
    for (Size size : SIZES) {
      for (double stroke : PreferredNumbers.of("R5", size.strokeMm)) {
        for (double force : PreferredNumbers.of("R5", size.forceN)) {
          for (Way way : Way.values()) {
            for (boolean apart : new boolean[] {false, true}) {
              Part part = part(serial++, size, stroke, force, way, apart);
              double end = FittingPlan.socketLength(size.thread);
              if (new RowFigures(part, end).bucklingFactor() >= RowFigures.BUCKLING_FACTOR) {
                parts.add(part);
              }
            }
          }
        }
      }
    }
    return parts;
  }

  private static Part part(
      int serial, Size size, double stroke, double force, Way way, boolean apart) {
    double ring = area(size.boreMm) - area(size.rodMm);
    double rodRoom = area(size.rodMm) * stroke / 1000;
    double oil = round(ring * (stroke + 12) / 1000, 2);
    double gas = apart ? round(2.5 * rodRoom + 0.1 * oil, 2) : 0;
    double behind = Math.ceil(1000 * (2.5 * rodRoom + 0.1 * oil) / area(size.boreMm));
    double compressed = stroke + behind + 65;
    Damper damper =
        new Damper(
            new Cylinder(
                mm(size.rodMm),
                mm(size.tubeMm),
                mm(size.boreMm),
                mm(stroke),
                mm(compressed + stroke),
                mm(compressed),
                Math.rint(4 + size.rodMm),
                1.5,
                ml(gas),
                ml(oil)),
            apart ? Math.rint(RESERVE_PRESSURE * area(size.rodMm)) : 0,
            way == Way.OUT ? light(force) : strong(force),
            way == Way.IN ? light(force) : strong(force));
    String description =
        "Damper %s/%s, stroke %s mm, %s N %s at 0.1 m/s%s"
            .formatted(
                text(size.rodMm),
                text(size.tubeMm),
                text(stroke),
                text(force),
                way == Way.BOTH ? "both ways" : way == Way.IN ? "pushed in" : "drawn out",
                apart ? ", gas apart" : "");
    double wall =
        Math.PI
            / 4
            * (Math.pow(damper.tubeDiameter(), 2) - Math.pow(damper.cylinder().boreDiameter(), 2));
    double mass = Build.mass(damper, wall) + 0.9e-3 * oil;
    return Build.plain(serial, Family.DAMPER, description, size.thread, damper, mass, DEAR);
  }

  private static Digression strong(double force) {
    return new Digression(force, SPEED, STRONG_EXPONENT);
  }

  private static Digression light(double force) {
    return new Digression(Math.rint(LIGHT * force), SPEED, LIGHT_EXPONENT);
  }
}
