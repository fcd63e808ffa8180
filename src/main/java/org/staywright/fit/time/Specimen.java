package org.staywright.fit.time;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.function.DoubleUnaryOperator;
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

  private final Job.Conditions conditions;
  private final Part part;
  private final double extended;
  private final GasFilled gas;
  private final Isotherms isotherms;

  private double kelvin;
  private double filled;
  private double left;
  private double[] coefficients;
  private DoubleUnaryOperator plain;

  Specimen(Job job, Part part, double extended, Travel travel) {
    conditions = job.conditions();
    this.part = part;
    this.extended = extended;
    gas = part.spring().law() instanceof ChargedSpring ? part.gas().orElseThrow() : null;
    isotherms = gas == null ? null : isotherms(travel);
  }

  private Isotherms isotherms(Travel travel) {
    double mass = gas.charged().gasMass();
    double hot = conditions.hottest();
    double tight =
        Math.min(
            gas.gasVolume(extended - travel.shortest(), hot),
            gas.gasVolume(extended - travel.longest(), hot));
    double highest = Math.min(DENSEST, ROOM_FOR_MORE * mass / tight);
    return new Isotherms(conditions.coldest() - 1, hot + 1, highest / 200, highest);
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
    if (gas == null) {
      plain = law.slow(kelvin);
      return;
    }
    filled = ((ChargedSpring) law).gasMass();
    left = Math.max(LEAST_GAS, part.wear().gasLeft(age, conditions.cyclesPerYear()));
    coefficients = isotherms.at(kelvin);
  }

  /** Slow force without friction at a length between mounts, N. */
  double force(double length) {
    if (gas == null) {
      return plain.applyAsDouble(extended - length);
    }
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
    if (Double.isNaN(needed) || gas == null) {
      return Double.POSITIVE_INFINITY;
    }
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
