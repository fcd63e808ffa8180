package org.staywright.form;

import static org.staywright.unit.Bound.above;
import static org.staywright.unit.Bound.between;

import java.util.function.ToDoubleFunction;
import org.staywright.part.Part;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** The numbers of a part, in the order of their columns. */
public enum PartColumn implements NumberColumn {
  FORCE_CLASS("force_class_n", above(0, 100_000, "N"), part -> part.spring().force()),
  FORCE_TOLERANCE("force_tolerance_n", between(0, 50_000, "N"), Part::forceTolerance),
  ROD_DIAMETER("rod_diameter_mm", above(0, 200, "mm"), part -> mm(part.spring().rodDiameter())),
  TUBE_DIAMETER("tube_diameter_mm", above(0, 400, "mm"), part -> mm(part.spring().tubeDiameter())),
  BORE_DIAMETER("bore_diameter_mm", above(0, 400, "mm"), part -> mm(part.spring().boreDiameter())),
  STROKE("stroke_mm", between(20, 3000, "mm"), part -> mm(part.spring().stroke())),
  EXTENDED_LENGTH(
      "extended_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().extendedLength())),
  COMPRESSED_LENGTH(
      "compressed_length_mm", above(0, 7000, "mm"), part -> mm(part.spring().compressedLength())),
  GAS_VOLUME("gas_volume_ml", above(0, 100_000, "ml"), part -> ml(part.spring().gasVolume())),
  OIL_VOLUME("oil_volume_ml", between(0, 100_000, "ml"), part -> ml(part.spring().oilVolume())),
  END_DAMPING("end_damping_mm", between(0, 3000, "mm"), 0, part -> mm(part.damping().endZone())),
  FRICTION("friction_n", between(0, 50_000, "N"), part -> part.spring().friction()),
  COLD_FRICTION_FACTOR(
      "cold_friction_factor", between(1, 10, ""), part -> part.spring().coldFrictionFactor()),
  ORIFICE_DIAMETER(
      "orifice_diameter_mm", above(0, 50, "mm"), part -> mm(part.damping().orificeDiameter())),
  ORIFICE_LENGTH(
      "orifice_length_mm", above(0, 500, "mm"), part -> mm(part.damping().orificeLength())),
  COMPRESSION_FLOW_FACTOR(
      "compression_flow_factor",
      between(1, 100, ""),
      part -> part.damping().compressionFlowFactor()),
  WALL_TIME_CONSTANT(
      "wall_time_constant_s", above(0, 1000, "s"), part -> part.damping().wallTimeConstant()),
  MIN_TEMPERATURE(
      "min_temperature_c",
      between(-60, 150, "°C"),
      part -> Unit.CELSIUS.of(part.limits().coldest())),
  MAX_TEMPERATURE(
      "max_temperature_c",
      between(-60, 150, "°C"),
      part -> Unit.CELSIUS.of(part.limits().hottest())),
  MAX_PRESSURE(
      "max_pressure_bar", above(1, 1000, "bar"), part -> Unit.BAR.of(part.limits().pressure())),
  MASS("mass_kg", above(0, 1000, "kg"), Part::mass),
  LOSS_PER_YEAR(
      "loss_percent_per_year",
      between(0, 100, "%"),
      part -> Unit.PERCENT.of(part.wear().perYear())),
  LOSS_PER_10K_CYCLES(
      "loss_percent_per_10k_cycles",
      between(0, 100, "%"),
      part -> Unit.PERCENT.of(part.wear().perCycle() * 10_000));

  private final String column;
  private final Bound bound;
  private final double whenEmpty;
  private final ToDoubleFunction<Part> of;

  PartColumn(String column, Bound bound, ToDoubleFunction<Part> of) {
    this(column, bound, Double.NaN, of);
  }

  PartColumn(String column, Bound bound, double whenEmpty, ToDoubleFunction<Part> of) {
    this.column = column;
    this.bound = bound;
    this.whenEmpty = whenEmpty;
    this.of = of;
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
