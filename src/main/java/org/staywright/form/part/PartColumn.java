package org.staywright.form.part;

import static org.staywright.part.Family.COIL_SPRING;
import static org.staywright.part.Family.DAMPER;
import static org.staywright.unit.Bound.above;
import static org.staywright.unit.Bound.between;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.CoilSpring;
import org.staywright.spring.Damper;
import org.staywright.spring.GasFilled;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.Spring;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** The numbers of a part, in the order of their columns; not every family has them all. */
public enum PartColumn implements NumberColumn {
  FORCE_CLASS("force_class_n", between(0, 100_000, "N"), part -> part.spring().force()),
  FORCE_TOLERANCE("force_tolerance_n", between(0, 50_000, "N"), Part::forceTolerance),
  ROD_DIAMETER("rod_diameter_mm", above(0, 200, "mm"), part -> mm(part.spring().rodDiameter())),
  TUBE_DIAMETER("tube_diameter_mm", above(0, 400, "mm"), part -> mm(part.spring().tubeDiameter())),
  BORE_DIAMETER(
      "bore_diameter_mm", above(0, 400, "mm"), Family::hasTube, part -> mm(bore(part.spring()))),
  STROKE("stroke_mm", between(20, 3000, "mm"), part -> mm(part.spring().stroke())),
  EXTENDED_LENGTH(
      "extended_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().extendedLength())),
  COMPRESSED_LENGTH(
      "compressed_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().compressedLength())),
  GAS_VOLUME(
      "gas_volume_ml", between(0, 100_000, "ml"), Family::hasTube, part -> ml(gas(part.spring()))),
  OIL_VOLUME(
      "oil_volume_ml", between(0, 100_000, "ml"), Family::hasTube, part -> ml(oil(part.spring()))),
  FULL_SIDE_DEAD_VOLUME(
      "full_side_dead_volume_ml",
      above(0, 100_000, "ml"),
      Family::locks,
      locking(spring -> ml(spring.fullSideDeadVolume()))),
  ROD_SIDE_DEAD_VOLUME(
      "rod_side_dead_volume_ml",
      above(0, 100_000, "ml"),
      Family::locks,
      locking(spring -> ml(spring.rodSideDeadVolume()))),
  LOCK_FORCE(
      "lock_force_n", above(0, 500_000, "N"), Family::locks, locking(LockingSpring::lockForce)),
  END_DAMPING(
      "end_damping_mm", between(0, 3000, "mm"), 0, Family::hasGas, part -> mm(part.endZone())),
  FRICTION("friction_n", between(0, 50_000, "N"), part -> part.spring().friction()),
  COLD_FRICTION_FACTOR(
      "cold_friction_factor",
      between(1, 10, ""),
      Family::hasTube,
      part -> part.spring().coldFrictionFactor()),
  ORIFICE_DIAMETER(
      "orifice_diameter_mm",
      above(0, 50, "mm"),
      Family::hasGas,
      part -> mm(part.damping().orificeDiameter())),
  ORIFICE_LENGTH(
      "orifice_length_mm",
      above(0, 500, "mm"),
      Family::hasGas,
      part -> mm(part.damping().orificeLength())),
  COMPRESSION_FLOW_FACTOR(
      "compression_flow_factor",
      between(1, 100, ""),
      Family::hasGas,
      part -> part.damping().compressionFlowFactor()),
  WALL_TIME_CONSTANT(
      "wall_time_constant_s",
      above(0, 1000, "s"),
      Family::hasGas,
      part -> part.damping().wallTimeConstant()),
  COMPRESSING_DAMPING(
      "compressing_damping_n",
      between(0, 500_000, "N"),
      DAMPER::equals,
      damper(damper -> damper.compressing().force())),
  EXTENDING_DAMPING(
      "extending_damping_n",
      between(0, 500_000, "N"),
      DAMPER::equals,
      damper(damper -> damper.extending().force())),
  DAMPING_SPEED(
      "damping_speed_mm_per_s",
      above(0, 10_000, "mm/s"),
      DAMPER::equals,
      damper(damper -> mm(damper.compressing().speed()))),
  COMPRESSING_EXPONENT(
      "compressing_exponent",
      above(0, 1, ""),
      DAMPER::equals,
      damper(damper -> damper.compressing().exponent())),
  EXTENDING_EXPONENT(
      "extending_exponent",
      above(0, 1, ""),
      DAMPER::equals,
      damper(damper -> damper.extending().exponent())),
  WIRE_DIAMETER(
      "wire_diameter_mm",
      above(0, 50, "mm"),
      COIL_SPRING::equals,
      coil(coil -> mm(coil.wireDiameter()))),
  ACTIVE_COILS(
      "active_coils", between(2, 500, ""), COIL_SPRING::equals, coil(CoilSpring::activeCoils)),
  FREE_LENGTH(
      "free_length_mm",
      above(0, 7000, "mm"),
      COIL_SPRING::equals,
      coil(coil -> mm(coil.freeLength()))),
  SHEAR_MODULUS(
      "shear_modulus_mpa",
      between(10_000, 200_000, "MPa"),
      COIL_SPRING::equals,
      coil(coil -> Unit.MEGAPASCAL.of(coil.shearModulus()))),
  TENSILE_STRENGTH(
      "tensile_strength_mpa",
      between(200, 4000, "MPa"),
      COIL_SPRING::equals,
      coil(coil -> Unit.MEGAPASCAL.of(coil.tensileStrength()))),
  MIN_TEMPERATURE(
      "min_temperature_c",
      between(-60, 150, "°C"),
      part -> Unit.CELSIUS.of(part.limits().coldest())),
  MAX_TEMPERATURE(
      "max_temperature_c",
      between(-60, 150, "°C"),
      part -> Unit.CELSIUS.of(part.limits().hottest())),
  MAX_PRESSURE(
      "max_pressure_bar",
      above(1, 1000, "bar"),
      Family::hasGas,
      part -> Unit.BAR.of(part.limits().pressure())),
  MASS("mass_kg", above(0, 1000, "kg"), Part::mass),
  LOSS_PER_YEAR(
      "loss_percent_per_year",
      between(0, 100, "%"),
      Family::hasGas,
      part -> Unit.PERCENT.of(part.wear().perYear())),
  LOSS_PER_10K_CYCLES(
      "loss_percent_per_10k_cycles",
      between(0, 100, "%"),
      Family::hasGas,
      part -> Unit.PERCENT.of(part.wear().perCycle() * 10_000));

  private static final Pattern CAPITAL = Pattern.compile("_(.)");

  private static final Map<Family, List<PartColumn>> BY_FAMILY =
      Stream.of(Family.values())
          .collect(
              Collectors.toMap(
                  family -> family,
                  family ->
                      Stream.of(values()).filter(column -> column.suits.test(family)).toList()));

  private final String column;
  private final Bound bound;
  private final double whenEmpty;
  private final Predicate<Family> suits;
  private final ToDoubleFunction<Part> of;

  PartColumn(String column, Bound bound, ToDoubleFunction<Part> of) {
    this(column, bound, family -> true, of);
  }

  PartColumn(String column, Bound bound, Predicate<Family> suits, ToDoubleFunction<Part> of) {
    this(column, bound, Double.NaN, suits, of);
  }

  PartColumn(
      String column,
      Bound bound,
      double whenEmpty,
      Predicate<Family> suits,
      ToDoubleFunction<Part> of) {
    this.column = column;
    this.bound = bound;
    this.whenEmpty = whenEmpty;
    this.suits = suits;
    this.of = of;
  }

  private static ToDoubleFunction<Part> locking(ToDoubleFunction<LockingSpring> of) {
    return part -> of.applyAsDouble((LockingSpring) part.spring());
  }

  private static ToDoubleFunction<Part> damper(ToDoubleFunction<Damper> of) {
    return part -> of.applyAsDouble((Damper) part.spring());
  }

  private static ToDoubleFunction<Part> coil(ToDoubleFunction<CoilSpring> of) {
    return part -> of.applyAsDouble((CoilSpring) part.spring());
  }

  private static double bore(Spring spring) {
    return spring instanceof Damper damper
        ? damper.boreDiameter()
        : ((GasFilled) spring).boreDiameter();
  }

  private static double gas(Spring spring) {
    return spring instanceof Damper damper ? damper.gasVolume() : ((GasFilled) spring).gasVolume();
  }

  private static double oil(Spring spring) {
    return spring instanceof Damper damper ? damper.oilVolume() : ((GasFilled) spring).oilVolume();
  }

  /** The columns of a family, in order. */
  public static List<PartColumn> of(Family family) {
    return BY_FAMILY.get(family);
  }

  boolean isOfEveryFamily() {
    return Stream.of(Family.values()).allMatch(suits);
  }

  /** The name where parts are exchanged as JSON: {@code strokeMm} for {@code stroke_mm}. */
  public String field() {
    return CAPITAL.matcher(column).replaceAll(letter -> letter.group(1).toUpperCase(Locale.ROOT));
  }

  @Override
  public String column() {
    return column;
  }

  @Override
  public Bound bound() {
    return bound;
  }

  @Override
  public double whenEmpty() {
    return whenEmpty;
  }

  /** The number of a part, in the column's unit. */
  public double of(Part part) {
    return NumberColumn.tidy(of.applyAsDouble(part));
  }

  private static double mm(double metres) {
    return Unit.MILLIMETRE.of(metres);
  }

  private static double ml(double cubicMetres) {
    return Unit.MILLILITRE.of(cubicMetres);
  }
}
