package org.staywright.form.part;

import static org.staywright.form.part.PartColumn.BORE_DIAMETER;
import static org.staywright.form.part.PartColumn.COLD_FRICTION_FACTOR;
import static org.staywright.form.part.PartColumn.COMPRESSED_LENGTH;
import static org.staywright.form.part.PartColumn.COMPRESSION_FLOW_FACTOR;
import static org.staywright.form.part.PartColumn.END_DAMPING;
import static org.staywright.form.part.PartColumn.EXTENDED_LENGTH;
import static org.staywright.form.part.PartColumn.FORCE_CLASS;
import static org.staywright.form.part.PartColumn.FORCE_TOLERANCE;
import static org.staywright.form.part.PartColumn.FRICTION;
import static org.staywright.form.part.PartColumn.FULL_SIDE_DEAD_VOLUME;
import static org.staywright.form.part.PartColumn.GAS_VOLUME;
import static org.staywright.form.part.PartColumn.LOSS_PER_10K_CYCLES;
import static org.staywright.form.part.PartColumn.LOSS_PER_YEAR;
import static org.staywright.form.part.PartColumn.MASS;
import static org.staywright.form.part.PartColumn.MAX_PRESSURE;
import static org.staywright.form.part.PartColumn.MAX_TEMPERATURE;
import static org.staywright.form.part.PartColumn.MIN_TEMPERATURE;
import static org.staywright.form.part.PartColumn.OIL_VOLUME;
import static org.staywright.form.part.PartColumn.ORIFICE_DIAMETER;
import static org.staywright.form.part.PartColumn.ORIFICE_LENGTH;
import static org.staywright.form.part.PartColumn.ROD_DIAMETER;
import static org.staywright.form.part.PartColumn.ROD_SIDE_DEAD_VOLUME;
import static org.staywright.form.part.PartColumn.STROKE;
import static org.staywright.form.part.PartColumn.TUBE_DIAMETER;
import static org.staywright.form.part.PartColumn.WALL_TIME_CONSTANT;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleSupplier;
import org.staywright.form.table.Cells;
import org.staywright.form.table.NumberColumn;
import org.staywright.gas.BeyondEquation;
import org.staywright.part.Family;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasRoom;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * The numbers of a part of which only some are given: what follows from them is worked out and
 * noted. Dimensions and gas volume follow by geometry and the gas law, the orifice by an ordinary
 * speed; tube wall, friction, oil, limits and wear are the ordinary ones of the sample range (our
 * assumption, no source).
 */
public final class Completion {

  /** F2/F1, in place of a gas volume. */
  public static final NumberColumn PROGRESSION =
      new NumberColumn() {
        @Override
        public String column() {
          return "progression";
        }

        @Override
        public Bound bound() {
          return new Bound(1, true, 10, false, "");
        }

        @Override
        public double whenEmpty() {
          return Double.NaN;
        }
      };

  /** How far a progression may be from the gas volume beside it. */
  private static final double AGREES = 0.05;

  /** More would pretend to a knowledge nobody has. */
  private static final MathContext FIGURES = new MathContext(6);

  /** Steel, g/ml (common practice, no source). */
  private static final double STEEL = 7.85;

  private final Family family;
  private final Cells cells;
  private final boolean hysteresis;
  private final Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
  private final List<String> derived = new ArrayList<>();

  /** NaN where none is given, or none that can be read. */
  private final double progression;

  /**
   * @param hysteresis whether friction is given as F3 − F1 rather than half of it
   */
  Completion(Family family, Cells cells, boolean hysteresis) {
    this.family = family;
    this.cells = cells;
    this.hysteresis = hysteresis;
    progression = cells.blank(PROGRESSION.column()) ? Double.NaN : cells.number(PROGRESSION);
    complete();
  }

  Map<PartColumn, Double> numbers() {
    return numbers;
  }

  /** Names of what was worked out, as in JSON. */
  List<String> derived() {
    return derived;
  }

  private void complete() {
    List<PartColumn> columns = PartColumn.of(family);
    columns.stream()
        .filter(column -> !cells.blank(column.column()))
        .forEach(column -> numbers.put(column, cells.number(column)));
    if (hysteresis && numbers.containsKey(FRICTION)) {
      numbers.put(FRICTION, numbers.get(FRICTION) / 2);
      derived.add(FRICTION.field());
    }
    lengths();
    if (family.hasTube()) {
      lacking(BORE_DIAMETER, () -> get(TUBE_DIAMETER) - 2 * wall(get(TUBE_DIAMETER)));
      lacking(COLD_FRICTION_FACTOR, () -> 1.5);
    }
    if (family.hasGas()) {
      gasSpring();
    }
    // What is still open is missing, or has a meaning when empty.
    boolean faulty =
        numbers.values().stream().anyMatch(value -> value.isNaN())
            || Double.isNaN(progression) && !cells.blank(PROGRESSION.column());
    for (PartColumn column : columns) {
      if (!numbers.containsKey(column)) {
        boolean silent = faulty && Double.isNaN(column.whenEmpty());
        numbers.put(column, silent ? Double.NaN : cells.number(column));
      }
    }
  }

  private void lengths() {
    lacking(EXTENDED_LENGTH, () -> get(COMPRESSED_LENGTH) + get(STROKE));
    lacking(COMPRESSED_LENGTH, () -> get(EXTENDED_LENGTH) - get(STROKE));
    lacking(STROKE, () -> get(EXTENDED_LENGTH) - get(COMPRESSED_LENGTH));
    lacking(FORCE_TOLERANCE, () -> Math.max(0.05 * get(FORCE_CLASS), 15));
    lacking(MIN_TEMPERATURE, () -> -30);
    lacking(MAX_TEMPERATURE, () -> 80);
  }

  private void gasSpring() {
    // A rod the thicker, the more its seals rub: 2 N at nothing, 35 N at 20 mm.
    lacking(FRICTION, () -> 0.1 * Math.pow(get(ROD_DIAMETER), 2) + 0.02 * get(FORCE_CLASS));
    lacking(OIL_VOLUME, this::oil);
    lacking(GAS_VOLUME, this::gas);
    lacking(ORIFICE_DIAMETER, this::orifice);
    lacking(ORIFICE_LENGTH, () -> 2);
    lacking(COMPRESSION_FLOW_FACTOR, () -> 4);
    lacking(WALL_TIME_CONSTANT, () -> 0.25 * get(BORE_DIAMETER) - 1 > 1 ? wallSeconds() : 1);
    lacking(MAX_PRESSURE, () -> 400);
    lacking(LOSS_PER_YEAR, () -> 2);
    lacking(LOSS_PER_10K_CYCLES, () -> 1.5);
    lacking(MASS, this::steel);
    agree();
  }

  private double wallSeconds() {
    return 0.25 * get(BORE_DIAMETER) - 1;
  }

  /**
   * Lets the free rod come out at 0.22 m/s in gas (common practice, no source), which passes it at
   * 0.8·√(2·R·T·A_r/A_a): 334 m/s·√(A_r/A_a) at 20 °C.
   */
  private double orifice() {
    double rod = Cylinder.area(get(ROD_DIAMETER));
    double ring = Cylinder.area(get(BORE_DIAMETER)) - rod;
    return Math.sqrt(4 / Math.PI * 0.22 / 334 * ring * Math.sqrt(ring / rod));
  }

  /** A film, and what fills the damped end. */
  private double oil() {
    double film = 0.015 * Math.pow(get(ROD_DIAMETER), 2);
    double zone = numbers.getOrDefault(END_DAMPING, 0.0);
    return film
        + (Cylinder.area(get(BORE_DIAMETER)) - Cylinder.area(get(ROD_DIAMETER))) * zone / 1000;
  }

  private double gas() {
    if (family.locks()) {
      return Cylinder.area(get(BORE_DIAMETER)) * get(STROKE) / 1000
          + get(FULL_SIDE_DEAD_VOLUME)
          + get(ROD_SIDE_DEAD_VOLUME);
    }
    return byProgression();
  }

  private double byProgression() {
    double rod = Cylinder.area(get(ROD_DIAMETER));
    double area = family.pulls() ? Cylinder.area(get(BORE_DIAMETER)) - rod : rod;
    double known = area + get(STROKE) + get(FORCE_CLASS) + get(FRICTION) + progression;
    if (!(area > 0) || Double.isNaN(known) || get(STROKE) <= 10 || get(FORCE_CLASS) <= 0) {
      return Double.NaN;
    }
    try {
      return Unit.MILLILITRE.of(
          GasRoom.of(
              area * 1e-6,
              Unit.MILLIMETRE.si(get(STROKE)),
              get(FORCE_CLASS),
              get(FRICTION),
              progression));
    } catch (BeyondEquation beyond) {
      cells.fault(
          new Fault(
              FORCE_CLASS.column(),
              NumberColumn.text(get(FORCE_CLASS)),
              beyond.bound().text(),
              "gas-out-of-bounds"));
      return Double.NaN;
    }
  }

  /** A progression beside a gas volume must say the same. */
  private void agree() {
    String column = PROGRESSION.column();
    if (Double.isNaN(progression) || family.locks() || derived.contains(GAS_VOLUME.field())) {
      return;
    }
    double computed = byProgression();
    double given = get(GAS_VOLUME);
    if (Math.abs(computed - given) > AGREES * given) {
      String bound = GAS_VOLUME.column() + " = " + NumberColumn.text(rounded(computed));
      cells.fault(new Fault(column, NumberColumn.text(progression), bound, "disagrees"));
    }
  }

  private double steel() {
    double rod = Cylinder.area(get(ROD_DIAMETER)) * (get(STROKE) + 25);
    double ring = Cylinder.area(get(TUBE_DIAMETER)) - Cylinder.area(get(BORE_DIAMETER));
    return STEEL * 1e-6 * (rod + ring * get(COMPRESSED_LENGTH));
  }

  /** Wall of ordinary tubes, as those of the sample range, mm. */
  private static double wall(double tube) {
    if (tube < 15) {
      return 1;
    }
    if (tube < 22) {
      return 1.2;
    }
    if (tube < 28) {
      return 1.5;
    }
    return tube < 40 ? 2 : 2.5;
  }

  private double get(PartColumn column) {
    return numbers.getOrDefault(column, Double.NaN);
  }

  private void lacking(PartColumn column, DoubleSupplier value) {
    if (numbers.containsKey(column)) {
      return;
    }
    double worked = value.getAsDouble();
    if (!Double.isNaN(worked)) {
      numbers.put(column, rounded(worked));
      derived.add(column.field());
    }
  }

  private static double rounded(double value) {
    return Double.isFinite(value) ? BigDecimal.valueOf(value).round(FIGURES).doubleValue() : value;
  }

  /** What the file says was worked out before, and what is now. */
  List<String> derivedOf(Cells cells) {
    Set<String> derived = new LinkedHashSet<>();
    String before = cells.optional("derived", 1000);
    if (before != null) {
      List<String> known = numbers().keySet().stream().map(PartColumn::field).toList();
      for (String name : before.split("\\s+")) {
        if (known.contains(name)) {
          derived.add(name);
        } else {
          cells.fault(new Fault("derived", name, String.join(" ", known), "not-a-choice"));
        }
      }
    }
    derived.addAll(derived());
    return List.copyOf(derived);
  }
}
