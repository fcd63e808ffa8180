package org.staywright.catalog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.part.PartColumn;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Part;
import org.staywright.part.PartNumber;
import org.staywright.unit.Unit;

/** The invented gas springs: every size, stroke and force class that passes the row tests. */
final class SpringPlan {

  private static final int FIRST_SERIAL = 1000;

  private SpringPlan() {}

  static List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    int serial = FIRST_SERIAL;
    for (SpringSize size : SpringSize.ALL) {
      for (double stroke : PreferredNumbers.of("R10", size.strokeMm())) {
        for (double force : PreferredNumbers.of("R20", size.forceN())) {
          for (boolean damped : new boolean[] {false, true}) {
            for (Finish finish : Finish.values()) {
              // A number is used up even where the spring is not made, so that the others keep
              // theirs.
              String number = PartNumber.of(serial++);
              Part part = row(number, size, stroke, force, damped, finish).part();
              if (isMade(part, size)) {
                parts.add(part);
              }
            }
          }
        }
      }
    }
    return parts;
  }

  private static boolean isMade(Part part, SpringSize size) {
    RowFigures figures = new RowFigures(part, FittingPlan.socketLength(size.thread()));
    return isOffered(part.finish(), part.spring().force())
        && Unit.BAR.of(figures.charge()) <= size.chargeBar()
        && figures.pass();
  }

  /** Stainless springs come in every other force class. */
  private static boolean isOffered(Finish finish, double force) {
    double[] coarse = PreferredNumbers.of("R10", new SpringSize.Span(force, force));
    return finish == Finish.ZINC || coarse.length > 0;
  }

  private static PartRow row(
      String number, SpringSize size, double stroke, double force, boolean damped, Finish finish) {
    boolean stainless = finish == Finish.STAINLESS;
    double boreArea = area(size.boreMm());
    double zone = damped ? Math.rint(Math.max(10, Math.min(40, 0.2 * stroke))) : 0;
    double oil = round(size.lubricantMl() + (boreArea - area(size.rodMm())) * zone / 1000, 2);
    double gas = round(boreArea * (stroke + size.endMm()) / 1000, 2) - oil;
    double mass = round(mass(size, stroke) + (damped ? 0.9e-3 * oil : 0), 3);

    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    numbers.put(PartColumn.FORCE_CLASS, force);
    numbers.put(PartColumn.FORCE_TOLERANCE, Math.ceil(Math.max(15, 0.05 * force)));
    numbers.put(PartColumn.ROD_DIAMETER, size.rodMm());
    numbers.put(PartColumn.TUBE_DIAMETER, size.tubeMm());
    numbers.put(PartColumn.BORE_DIAMETER, size.boreMm());
    numbers.put(PartColumn.STROKE, stroke);
    numbers.put(PartColumn.EXTENDED_LENGTH, 2 * stroke + size.fixedMm());
    numbers.put(PartColumn.COMPRESSED_LENGTH, stroke + size.fixedMm());
    numbers.put(PartColumn.GAS_VOLUME, NumberColumn.tidy(gas));
    numbers.put(PartColumn.OIL_VOLUME, oil);
    numbers.put(PartColumn.END_DAMPING, zone);
    numbers.put(PartColumn.FRICTION, Math.rint(size.frictionN() + 0.02 * force));
    numbers.put(PartColumn.COLD_FRICTION_FACTOR, 1.5);
    numbers.put(PartColumn.ORIFICE_DIAMETER, size.orificeMm());
    numbers.put(PartColumn.ORIFICE_LENGTH, 2.0);
    numbers.put(PartColumn.COMPRESSION_FLOW_FACTOR, 4.0);
    numbers.put(PartColumn.WALL_TIME_CONSTANT, size.wallTimeS());
    numbers.put(PartColumn.MIN_TEMPERATURE, -30.0);
    numbers.put(PartColumn.MAX_TEMPERATURE, 80.0);
    numbers.put(PartColumn.MAX_PRESSURE, 400.0);
    numbers.put(PartColumn.MASS, mass);
    numbers.put(PartColumn.LOSS_PER_YEAR, size.lossPercent());
    numbers.put(PartColumn.LOSS_PER_10K_CYCLES, 1.5);
    return new PartRow(
        number,
        description(size, stroke, force, damped, stainless),
        Family.GAS_SPRING,
        finish,
        new Part.Ends(size.thread(), size.thread()),
        damped ? Mounting.ROD_DOWN : Mounting.ANY,
        null,
        numbers,
        Invented.spring(number, mass, force, damped, stainless),
        List.of());
  }

  private static String description(
      SpringSize size, double stroke, double force, boolean damped, boolean stainless) {
    return "Gas spring %s/%s, stroke %s mm, %s N%s%s"
        .formatted(
            NumberColumn.text(size.rodMm()),
            NumberColumn.text(size.tubeMm()),
            NumberColumn.text(stroke),
            NumberColumn.text(force),
            damped ? ", end damped" : "",
            stainless ? ", stainless" : "");
  }

  /** Along a straight line from the shortest to the longest spring of a size, kg. */
  private static double mass(SpringSize size, double stroke) {
    double share =
        (stroke - size.strokeMm().low()) / (size.strokeMm().high() - size.strokeMm().low());
    return size.massKg().low() + share * (size.massKg().high() - size.massKg().low());
  }

  private static double area(double diameterMm) {
    return Math.PI / 4 * diameterMm * diameterMm;
  }

  private static double round(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
  }
}
