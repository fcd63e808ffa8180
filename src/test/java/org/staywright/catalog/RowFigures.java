package org.staywright.catalog;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.LITRE;

import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.GasSpring;
import org.staywright.spring.SteppedColumn;
import org.staywright.spring.ThickTube;

/**
 * The figures that decide whether a spring may be in the range.
 *
 * @param part in question
 * @param endLength that an end fitting adds at either end, m
 */
record RowFigures(Part part, double endLength) {

  static final double PROGRESSION_LOW = 1.08;
  static final double PROGRESSION_HIGH = 1.65;
  static final double BURST_FACTOR = 4;
  static final double PRESSURE_VOLUME_BAR_L = 80;
  static final double BUCKLING_FACTOR = 3;

  /** Tensile strength of a tube of E355+N, Pa (EN 10305-1; shared/materials.csv). */
  static final double TENSILE = 490e6;

  private static final int STEPS = 20;

  boolean pass() {
    double progression = part.spring().progression();
    return progression >= PROGRESSION_LOW
        && progression <= PROGRESSION_HIGH
        && peakPressure() <= part.limits().pressure()
        && burstFactor() >= BURST_FACTOR
        && pressureVolume() <= PRESSURE_VOLUME_BAR_L
        && bucklingFactor() >= BUCKLING_FACTOR;
  }

  /** Absolute pressure as delivered, 5 mm in, 20 °C, Pa. */
  double charge() {
    return ((GasSpring) part.spring()).chargePressure(part.spring().force());
  }

  /** Pressure at which the bore yields at the tube's tensile strength, over the gauge charge. */
  double burstFactor() {
    GasSpring spring = (GasSpring) part.spring();
    ThickTube tube = new ThickTube(spring.boreDiameter() / 2, spring.tubeDiameter() / 2);
    return tube.pressureAt(TENSILE) / (charge() - ATMOSPHERE);
  }

  /** Gauge charge times gas volume, bar·L. */
  double pressureVolume() {
    return BAR.of(charge() - ATMOSPHERE) * LITRE.of(part.gas().orElseThrow().gasVolume());
  }

  /** Absolute pressure of the strongest, hottest spring pushed right in at once, Pa. */
  double peakPressure() {
    return fast().pressure(part.spring().stroke());
  }

  /** Load on its mounts in the same stroke, N. */
  double peakLoad() {
    return fast().force(part.spring().stroke()) + friction();
  }

  /** Least critical load over load during the same stroke. */
  double bucklingFactor() {
    GasSpring spring = (GasSpring) part.spring();
    ChargedSpring.FastStroke fast = fast();
    double least = Double.MAX_VALUE;
    for (int i = 0; i <= STEPS; i++) {
      double compression = spring.stroke() * i / STEPS;
      double length = spring.extendedLength() + 2 * endLength - compression;
      double critical = SteppedColumn.of(spring, length, endLength).criticalLoad();
      least = Math.min(least, critical / (fast.force(compression) + friction()));
    }
    return least;
  }

  private double friction() {
    return part.spring().friction(part.limits().hottest());
  }

  private ChargedSpring.FastStroke fast() {
    GasSpring spring = (GasSpring) part.spring();
    return spring
        .charged(1 + part.forceTolerance() / spring.force(), 1)
        .fast(0, spring.stroke(), part.limits().hottest());
  }
}
