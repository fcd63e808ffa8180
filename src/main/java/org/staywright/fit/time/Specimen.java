package org.staywright.fit.time;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job;
import org.staywright.gas.Isotherms;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasFilled;

/** One spring out of many, drawn again and again. */
final class Specimen {

  /** A specimen with less gas left is as good as empty. */
  private static final double LEAST_GAS = 0.01;

  private static final double ROOM_FOR_MORE = 1.6;
  private static final double DENSEST = 690;

  /** What is driven by gas, and how that behaves. */
  private record Filling(GasFilled gas, Isotherms isotherms) {}

  private final Job.Conditions conditions;
  private final Part part;
  private final double extended;
  private final @Nullable Filling filling;

  private double kelvin;
  private double filled;
  private double left;
  private double[] coefficients = {};
  private DoubleUnaryOperator plain = compression -> Double.NaN;

  Specimen(Job job, Part part, double extended, Travel travel) {
    conditions = job.conditions();
    this.part = part;
    this.extended = extended;
    filling =
        part.spring().law() instanceof ChargedSpring
            ? filling(part.gas().orElseThrow(), travel)
            : null;
  }

  private Filling filling(GasFilled gas, Travel travel) {
    double mass = gas.charged().gasMass();
    double hot = conditions.hottest();
    double tight =
        Math.min(
            gas.gasVolume(extended - travel.shortest(), hot),
            gas.gasVolume(extended - travel.longest(), hot));
    double highest = Math.min(DENSEST, ROOM_FOR_MORE * mass / tight);
    return new Filling(
        gas, new Isotherms(conditions.coldest() - 1, hot + 1, highest / 200, highest));
  }

  /**
   * Draws one.
   *
   * @param forceFactor on the force class
   * @param temperature K
   * @param age years
   */
  void take(double forceFactor, double temperature, double age) {
    kelvin = temperature;
    ForceLaw law = part.spring().law(forceFactor, 1);
    if (filling == null) {
      plain = law.slow(kelvin);
      return;
    }
    filled = ((ChargedSpring) law).gasMass();
    left = Math.max(LEAST_GAS, part.wear().gasLeft(age, conditions.cyclesPerYear()));
    coefficients = filling.isotherms().at(kelvin);
  }

  /** Slow force without friction at a length between mounts, N. */
  double force(double length) {
    if (filling == null) {
      return plain.applyAsDouble(extended - length);
    }
    GasFilled gas = filling.gas();
    double density = filled * left / gas.gasVolume(extended - length, kelvin);
    return (Isotherms.pressure(coefficients, density) - ATMOSPHERE) * gas.drivingArea();
  }

  /**
   * Years of service until it loses so much gas that it no longer has a force.
   *
   * @param needed N, NaN where none is
   * @param length between mounts, m
   * @return infinite where it never comes to that
   */
  double yearsUntil(double needed, double length) {
    if (Double.isNaN(needed) || filling == null) {
      return Double.POSITIVE_INFINITY;
    }
    GasFilled gas = filling.gas();
    double pressure = ATMOSPHERE + needed / gas.drivingArea();
    if (pressure <= ATMOSPHERE) {
      return Double.POSITIVE_INFINITY;
    }
    double share = density(pressure) * gas.gasVolume(extended - length, kelvin) / filled;
    double perYear = 1 - part.wear().gasLeft(1, conditions.cyclesPerYear());
    if (share >= 1) {
      return 0;
    }
    return perYear == 0 ? Double.POSITIVE_INFINITY : (1 - share) / perYear;
  }

  /** By a few steps of Newton on the polynomial, which is nearly straight. */
  private double density(double pressure) {
    double density = pressure / coefficients[0];
    for (int i = 0; i < 6; i++) {
      double step = 1e-4 * density;
      double here = Isotherms.pressure(coefficients, density);
      double slope = (Isotherms.pressure(coefficients, density + step) - here) / step;
      density += (pressure - here) / slope;
    }
    return density;
  }
}
