package org.staywright.catalog;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.LITRE;
import static org.staywright.unit.Unit.ROOM;

import java.util.DoubleSummaryStatistics;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.staywright.fit.job.MovingPart;
import org.staywright.motion.Strut;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasFilled;
import org.staywright.spring.Spring;

/**
 * The figures that decide whether a part may be in the range.
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

  /** How fast the free rod comes out in gas, m/s: common practice, no source. */
  static final double SLOWEST_OUT = 0.15;

  static final double FASTEST_OUT = 0.3;

  /** The fastest a damper is taken to be moved, m/s: common practice, no source. */
  static final double FAST = 0.3;

  private static final int STEPS = 20;

  /** Whether a spring that gas drives may be made. */
  boolean pass() {
    return pass(PROGRESSION_LOW, PROGRESSION_HIGH);
  }

  boolean pass(double leastProgression, double mostProgression) {
    double progression = part.spring().progression();
    return progression >= leastProgression
        && progression <= mostProgression
        && peakPressure() <= part.limits().pressure()
        && burstFactor() >= BURST_FACTOR
        && pressureVolume() <= PRESSURE_VOLUME_BAR_L
        && bucklingFactor() >= BUCKLING_FACTOR;
  }

  /** Absolute pressure as delivered, at the gauge point, 20 °C, Pa. */
  double charge() {
    return gas().chargePressure(part.spring().force());
  }

  /** Pressure at which the bore yields at the tube's tensile strength, over the gauge charge. */
  double burstFactor() {
    return gas().tube().pressureAt(TENSILE) / (charge() - ATMOSPHERE);
  }

  /** Gauge charge times gas volume, bar·L. */
  double pressureVolume() {
    return BAR.of(charge() - ATMOSPHERE) * LITRE.of(gas().cylinder().gasVolume());
  }

  /** Absolute pressure of the strongest, hottest spring strained right through at once, Pa. */
  double peakPressure() {
    return fast().pressure(hardest());
  }

  /**
   * Steady speeds of the free rod as it comes out, 20 °C, at evenly spaced places, from where the
   * oil ends to full compression, m/s.
   */
  DoubleSummaryStatistics speedsInGas() {
    Strut strut = MovingPart.strut(part, ROOM);
    double oil = strut.zones().extension();
    double rest = part.spring().stroke() - oil;
    return speeds(i -> strut.freeSpeed(oil + rest * i / STEPS, false));
  }

  /** The same in the oil at the end, m/s. */
  DoubleSummaryStatistics speedsInOil() {
    Strut strut = MovingPart.strut(part, ROOM);
    return speeds(i -> strut.freeSpeed(strut.zones().extension() * i / STEPS, true));
  }

  private static DoubleSummaryStatistics speeds(IntToDoubleFunction speed) {
    return IntStream.rangeClosed(0, STEPS).mapToDouble(speed).summaryStatistics();
  }

  /** Load on its mounts in the same stroke, N. */
  double peakLoad() {
    return load(fast(), hardest());
  }

  /** Least critical load over load during the same stroke. */
  double bucklingFactor() {
    Spring spring = part.spring();
    ForceLaw.Fast fast = fast();
    double least = Double.MAX_VALUE;
    for (int i = 0; i <= STEPS; i++) {
      double compression = spring.stroke() * i / STEPS;
      double length = spring.extendedLength() + 2 * endLength - compression;
      double critical = spring.criticalLoad(length, endLength);
      least = Math.min(least, critical / load(fast, compression));
    }
    return least;
  }

  private GasFilled gas() {
    return part.gas().orElseThrow();
  }

  private double load(ForceLaw.Fast fast, double compression) {
    double damping = part.spring() instanceof Damper damper ? damper.force(FAST) : 0;
    double friction = part.spring().friction(part.limits().hottest());
    return Math.abs(fast.force(compression)) + friction + damping;
  }

  private double hardest() {
    return part.spring().stroke() - part.spring().restCompression();
  }

  private ForceLaw.Fast fast() {
    Spring spring = part.spring();
    double strongest = spring.force() == 0 ? 1 : 1 + part.forceTolerance() / spring.force();
    return spring
        .law(strongest, 1)
        .fast(spring.restCompression(), hardest(), part.limits().hottest());
  }
}
