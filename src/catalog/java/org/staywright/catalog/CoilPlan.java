package org.staywright.catalog;

import static org.staywright.catalog.Build.mm;
import static org.staywright.catalog.Build.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.staywright.catalog.SpringSize.Span;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.unit.Unit;

/**
 * The invented coil springs: coils of drawn wire on a guide, none so slender that it buckles, none
 * stressed beyond what EN 13906-1 permits when solid. Tensile strengths: {@code
 * shared/spring-wire.csv}.
 */
final class CoilPlan {

  private static final int FIRST_SERIAL = 300_000;
  private static final double DEAR = 0.9;

  private static final double[] INDEX = {6, 7, 8, 10};
  private static final double[] COILS = {6.5, 8.5, 10.5, 12.5, 14.5, 16.5};

  /** Free length over coil diameter below which a coil between parallel seats never buckles. */
  private static final double SLENDER = 5.1;

  /** Share of the permissible stress used when solid. */
  private static final double USED = 0.92;

  private static final double FRICTION_N = 2;

  /** What both ends of the guide add to the coil, mm. */
  private static final double ENDS_MM = 36;

  private static final double STEEL = 7850;

  private CoilPlan() {}

  static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_SERIAL;
    for (Map<String, String> wire : SharedTable.rows("spring-wire.csv")) {
      double diameter = Double.parseDouble(wire.get("wire_mm"));
      double tensile = Double.parseDouble(wire.get("Rm_min_MPa"));
      for (double index : INDEX) {
        for (double coils : COILS) {
          part(serial++, diameter, tensile, Math.rint(index * diameter), coils)
              .ifPresent(parts::add);
        }
      }
    }
    return parts;
  }

  private static Optional<Part> part(
      int serial, double wire, double tensile, double coil, double coils) {
    CoilSpring bare = coil(wire, coil, coils, 100, tensile, 20, 20, 0);
    double deepest = USED * bare.permissibleStress() / bare.stress(bare.rate());
    double free =
        Math.floor(Math.min(Unit.MILLIMETRE.of(bare.solidLength() + deepest), SLENDER * coil));
    double room = free - Unit.MILLIMETRE.of(bare.solidLength() + bare.leastGaps());
    double[] strokes = PreferredNumbers.of("R10", new Span(20, Math.max(20, 0.75 * room)));
    double stroke = strokes[strokes.length - 1];
    double most = bare.rate() * (mm(room - stroke) + 5e-3) - FRICTION_N;
    double[] forces = PreferredNumbers.of("R20", new Span(10, Math.max(10, most)));
    double force = forces[forces.length - 1];
    CoilSpring made = coil(wire, coil, coils, free, tensile, stroke, force, FRICTION_N);
    boolean sound =
        room > stroke
            && made.preload() > 0
            && made.stroke() <= made.usableStroke()
            && made.solidStress() <= made.permissibleStress();
    return sound ? Optional.of(part(serial, made)) : Optional.empty();
  }

  private static Part part(int serial, CoilSpring spring) {
    double coilMm = Unit.MILLIMETRE.of(spring.tubeDiameter());
    double guideMm = Unit.MILLIMETRE.of(spring.rodDiameter());
    // The thread is cut on the guide.
    String thread =
        guideMm < 5 ? "M4" : guideMm < 6 ? "M5" : guideMm < 8 ? "M6" : guideMm < 10 ? "M8" : "M10";
    double wireLength = Math.PI * spring.coilDiameter() * (spring.activeCoils() + 2);
    double wire = Math.PI / 4 * Math.pow(spring.wireDiameter(), 2) * wireLength;
    double guide = Math.PI / 4 * Math.pow(spring.rodDiameter(), 2) * spring.extendedLength();
    double mass = STEEL * (wire + guide);
    String description =
        "Coil spring %s × %s on a guide, stroke %s mm, %s N"
            .formatted(
                text(Unit.MILLIMETRE.of(spring.wireDiameter())),
                text(Build.round(coilMm, 2)),
                text(Unit.MILLIMETRE.of(spring.stroke())),
                text(spring.force()));
    return Build.plain(serial, Family.COIL_SPRING, description, thread, spring, mass, DEAR);
  }

  private static CoilSpring coil(
      double wire,
      double coil,
      double coils,
      double free,
      double tensile,
      double stroke,
      double force,
      double friction) {
    double guide = Math.floor(0.8 * (coil - wire));
    double rate =
        CoilSpring.DRAWN_WIRE * Math.pow(mm(wire), 4) / (8 * Math.pow(mm(coil), 3) * coils);
    double installed = Math.floor(free - 1000 * ((force + friction) / rate - 5e-3));
    double extended = installed + ENDS_MM;
    return new CoilSpring(
        mm(guide),
        mm(coil + wire),
        mm(wire),
        coils,
        mm(free),
        CoilSpring.DRAWN_WIRE,
        Unit.MEGAPASCAL.si(tensile),
        mm(stroke),
        mm(extended),
        mm(extended - stroke),
        force,
        friction);
  }
}
