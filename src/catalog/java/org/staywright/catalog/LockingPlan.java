package org.staywright.catalog;

import static org.staywright.catalog.Build.area;
import static org.staywright.catalog.Build.ml;
import static org.staywright.catalog.Build.mm;
import static org.staywright.catalog.Build.round;
import static org.staywright.catalog.Build.text;

import java.util.ArrayList;
import java.util.List;
import org.staywright.catalog.SpringSize.Span;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;

/** The invented seat columns and locking struts. */
final class LockingPlan {

  private static final int FIRST_COLUMN = 100_000;
  private static final int FIRST_STRUT = 150_000;

  /** What a lock adds to the price of a plain spring. */
  private static final double COLUMN_DEAR = 1.7;

  private static final double STRUT_DEAR = 1.9;
  private static final double RIGID_DEAR = 2.6;

  /** Force class of a stiff column that still sinks under 45 kg, hot and new, N. */
  private static final double STIFFEST = 280;

  private static final Span COLUMN_PROGRESSION = new Span(1.1, 1.3);

  /** A lock holds up to this gauge pressure on its piston, unless the rod would buckle. */
  private static final double LOCK_BAR = 200;

  private static final double LOCK_BUCKLING = 2;

  /**
   * One size.
   *
   * @param innerMm outside of the inner tube where a sleeve lies around it, 0 for none
   * @param sleeveMm bore of that sleeve
   * @param orificeMm by which the free rod comes out at 0.15 to 0.30 m/s in gas
   */
  private record Size(
      double rodMm,
      double tubeMm,
      double boreMm,
      double innerMm,
      double sleeveMm,
      String thread,
      Span forceN,
      Span strokeMm,
      double fixedMm,
      double orificeMm) {}

  private static final List<Size> COLUMNS =
      List.of(
          column(10, 35, 20, 31, "M8", 160, 500, 60, 160, 0.6),
          column(12, 38, 22, 34, "M10", 200, 710, 80, 200, 0.6),
          column(14, 40, 25, 36, "M12", 250, 900, 80, 250, 0.65),
          column(16, 50, 28, 45, "M12", 280, 1120, 100, 315, 0.7),
          column(20, 55, 32, 50, "M14", 400, 1600, 100, 315, 0.75),
          // Stiffer when locked: more bore to the rod. No stronger than what a light sitter sinks.
          column(8, 30, 18, 26, "M8", 160, STIFFEST, 80, 160, 0.6),
          column(10, 38, 23, 33, "M8", 160, STIFFEST, 80, 160, 0.75),
          column(12, 45, 28, 39, "M10", 160, STIFFEST, 80, 160, 0.95),
          column(14, 50, 32, 44, "M12", 160, STIFFEST, 80, 160, 1.25));

  private static final List<Size> STRUTS =
      List.of(
          strut(8, 19, 16, "M8", 100, 500, 40, 200, 0.5),
          strut(10, 22, 19, "M8", 160, 800, 50, 315, 0.55),
          strut(10, 28, 24, "M10", 160, 800, 50, 315, 0.85),
          strut(12, 28, 24, "M10", 250, 1250, 63, 400, 0.7),
          strut(14, 30, 25, "M12", 315, 1600, 80, 500, 0.6));

  private LockingPlan() {}

  static List<Part> columns() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_COLUMN;
    for (Size size : COLUMNS) {
      for (double stroke : PreferredNumbers.of("R10", size.strokeMm)) {
        for (double force : PreferredNumbers.of("R20", size.forceN)) {
          // A number is used up even where the part is not made, so that the others keep theirs.
          Part part = column(serial++, size, stroke, force);
          double end = FittingPlan.socketLength(size.thread);
          if (new RowFigures(part, end).pass(COLUMN_PROGRESSION.low(), COLUMN_PROGRESSION.high())) {
            parts.add(part);
          }
        }
      }
    }
    return parts;
  }

  static List<Part> struts() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_STRUT;
    for (Size size : STRUTS) {
      for (double stroke : PreferredNumbers.of("R10", size.strokeMm)) {
        for (double force : PreferredNumbers.of("R10", size.forceN)) {
          for (Locking locking : Locking.values()) {
            Part part = strut(serial++, size, stroke, force, locking);
            boolean offered = locking == Locking.ELASTIC || coarse(stroke);
            double end = FittingPlan.socketLength(size.thread);
            if (offered && new RowFigures(part, end).pass()) {
              parts.add(part);
            }
          }
        }
      }
    }
    return parts;
  }

  /** Rigid struts come in every other stroke. */
  private static boolean coarse(double stroke) {
    return PreferredNumbers.of("R5", new Span(stroke, stroke)).length > 0;
  }

  /** Bore of the sleeve of the column with that rod and tube. */
  static double sleeveMm(double rodMm, double tubeMm) {
    return COLUMNS.stream()
        .filter(size -> Math.hypot(size.rodMm - rodMm, size.tubeMm - tubeMm) < 1e-9)
        .mapToDouble(Size::sleeveMm)
        .findFirst()
        .orElseThrow();
  }

  /** Room of the sleeve: what lies between inner tube and sleeve, along the stroke and the ends. */
  static double sleeveMl(double innerMm, double sleeveMm, double strokeMm) {
    return (area(sleeveMm) - area(innerMm)) * (strokeMm + 20) / 1000;
  }

  private static Part column(int serial, Size size, double stroke, double force) {
    double full = round(area(size.boreMm) * 8 / 1000, 2);
    double side = round(sleeveMl(size.innerMm, size.sleeveMm, stroke), 2);
    LockingSpring spring = spring(size, stroke, force, full, side, 1.5, 0, Locking.ELASTIC);
    String description =
        "Seat column %s/%s, stroke %s mm, %s N"
            .formatted(text(size.rodMm), text(size.tubeMm), text(stroke), text(force));
    return Build.gas(
        serial, Family.SEAT_COLUMN, description, size.thread, spring, size.orificeMm, COLUMN_DEAR);
  }

  private static Part strut(int serial, Size size, double stroke, double force, Locking locking) {
    double bore = area(size.boreMm);
    double ring = bore - area(size.rodMm);
    double full = round(bore * 8 / 1000, 2);
    double side = round(ring * 12 / 1000, 2);
    // Oil that fills a side has its own room in a longer tube; the gas keeps the room it has
    // without.
    double caught =
        (locking.rigidPushed() ? bore * stroke / 1000 + full : 0)
            + (locking.rigidPulled() ? ring * stroke / 1000 + side : 0);
    double longer = Math.ceil(1000 * caught / bore);
    double oil = round(0.8 + caught, 2);
    LockingSpring spring = spring(size, stroke, force, full, side, oil, longer, locking);
    String description =
        "Locking strut %s/%s, stroke %s mm, %s N, %s"
            .formatted(
                text(size.rodMm), text(size.tubeMm), text(stroke), text(force), said(locking));
    double dear = locking == Locking.ELASTIC ? STRUT_DEAR : RIGID_DEAR;
    return Build.gas(
        serial, Family.LOCKING_STRUT, description, size.thread, spring, size.orificeMm, dear);
  }

  private static String said(Locking locking) {
    return switch (locking) {
      case ELASTIC -> "locks on gas";
      case RIGID_PUSH -> "locks rigid when pushed";
      case RIGID_PULL -> "locks rigid when pulled";
      case RIGID_BOTH -> "locks rigid both ways";
    };
  }

  private static LockingSpring spring(
      Size size,
      double stroke,
      double force,
      double fullMl,
      double sideMl,
      double oilMl,
      double longerMm,
      Locking locking) {
    double gas = round(area(size.boreMm) * stroke / 1000 + fullMl + sideMl, 2);
    double compressed = stroke + size.fixedMm + longerMm;
    GasSpring open =
        new GasSpring(
            new Cylinder(
                mm(size.rodMm),
                mm(size.tubeMm),
                mm(size.boreMm),
                mm(stroke),
                mm(compressed + stroke),
                mm(compressed),
                Math.rint(10 + 0.04 * force),
                1.5,
                ml(gas),
                ml(oilMl)),
            force);
    double end = FittingPlan.socketLength(size.thread);
    double buckles = open.criticalLoad(open.extendedLength() + 2 * end, end);
    double held =
        Math.min(
            Unit.BAR.si(LOCK_BAR) * open.cylinder().boreArea(), buckles / LOCK_BUCKLING - force);
    return new LockingSpring(open, ml(fullMl), ml(sideMl), locking, preferredBelow(held));
  }

  private static double preferredBelow(double most) {
    double[] numbers = PreferredNumbers.of("R10", new Span(1, Math.max(most, 1)));
    return NumberColumn.tidy(numbers[numbers.length - 1]);
  }

  private static Size column(
      double rod,
      double tube,
      double bore,
      double sleeve,
      String thread,
      double forceLow,
      double forceHigh,
      double strokeLow,
      double strokeHigh,
      double orifice) {
    Span force = new Span(forceLow, forceHigh);
    Span stroke = new Span(strokeLow, strokeHigh);
    return new Size(rod, tube, bore, bore + 3, sleeve, thread, force, stroke, 75, orifice);
  }

  private static Size strut(
      double rod,
      double tube,
      double bore,
      String thread,
      double forceLow,
      double forceHigh,
      double strokeLow,
      double strokeHigh,
      double orifice) {
    Span force = new Span(forceLow, forceHigh);
    Span stroke = new Span(strokeLow, strokeHigh);
    return new Size(rod, tube, bore, 0, 0, thread, force, stroke, 85, orifice);
  }
}
