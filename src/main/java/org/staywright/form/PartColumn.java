package org.staywright.form;

import static org.staywright.unit.Bound.above;
import static org.staywright.unit.Bound.between;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.GasFilled;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** The numbers of a part, in the order of their columns; not every family has them all. */
public enum PartColumn implements NumberColumn {
  FORCE_CLASS("force_class_n", above(0, 100_000, "N"), part -> part.spring().force()),
  FORCE_TOLERANCE("force_tolerance_n", between(0, 50_000, "N"), Part::forceTolerance),
  ROD_DIAMETER("rod_diameter_mm", above(0, 200, "mm"), part -> mm(part.spring().rodDiameter())),
  TUBE_DIAMETER("tube_diameter_mm", above(0, 400, "mm"), part -> mm(part.spring().tubeDiameter())),
  BORE_DIAMETER(
      "bore_diameter_mm",
      above(0, 400, "mm"),
      Family::hasGas,
      gas(filled -> mm(filled.boreDiameter()))),
  STROKE("stroke_mm", between(20, 3000, "mm"), part -> mm(part.spring().stroke())),
  EXTENDED_LENGTH(
      "extended_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().extendedLength())),
  COMPRESSED_LENGTH(
      "compressed_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().compressedLength())),
  GAS_VOLUME(
      "gas_volume_ml",
      above(0, 100_000, "ml"),
      Family::hasGas,
      gas(filled -> ml(filled.gasVolume()))),
  OIL_VOLUME(
      "oil_volume_ml",
      between(0, 100_000, "ml"),
      Family::hasGas,
      gas(filled -> ml(filled.oilVolume()))),
  END_DAMPING(
      "end_damping_mm", between(0, 3000, "mm"), 0, Family::hasGas, part -> mm(part.endZone())),
  FRICTION("friction_n", between(0, 50_000, "N"), part -> part.spring().friction()),
  COLD_FRICTION_FACTOR(
      "cold_friction_factor", between(1, 10, ""), part -> part.spring().coldFrictionFactor()),
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

  private static ToDoubleFunction<Part> gas(ToDoubleFunction<GasFilled> of) {
    return part -> of.applyAsDouble((GasFilled) part.spring());
  }

  /** The columns of a family, in order. */
  public static List<PartColumn> of(Family family) {
    return Stream.of(values()).filter(column -> column.suits.test(family)).toList();
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
