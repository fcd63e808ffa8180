package org.staywright.fit.rank;

import static org.staywright.unit.Unit.ATMOSPHERE;

import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Figuring;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.gas.Isotherm;
import org.staywright.mechanism.Travel;
import org.staywright.spring.GasSpring;
import org.staywright.spring.SteppedColumn;

/**
 * A cheap upper bound on the fast stroke: p ≤ p₁(ρ/ρ₁)^κ with κ, the isentropic exponent at the far
 * density and the starting temperature. κ rises with density and falls with temperature, so that
 * the true exponents on the way are all smaller. What the bound clears is clear; the rest is
 * computed exactly.
 */
public final class PeakBound {

  /** Beyond this density or ratio of densities nothing is cleared, kg/m³. */
  public static final double DENSEST = 450;

  private static final double WIDEST = 1.8;

  /**
   * Pieces of the travel in which the shortest length's force is held against the longest's column.
   */
  private static final int PIECES = 8;

  private final Job job;
  private final double kelvin;
  private final Isotherm isotherm;

  PeakBound(Job job) {
    this.job = job;
    kelvin = SpringState.STRONG.kelvin(job.conditions());
    isotherm = Isotherm.at(kelvin);
  }

  /** True unless pressure, buckling, mount load and swing are all surely within their limits. */
  boolean exceeds(Survivor survivor, GasSpring spring, double mass, double pressureLimit) {
    Travel travel = survivor.path().travel();
    double swing = Figuring.swing(job, travel.shortest());
    if (swing > survivor.rod().swing() || swing > survivor.tube().swing()) {
      return true;
    }
    double start = density(survivor, spring, mass, travel.longest());
    double end = density(survivor, spring, mass, travel.shortest());
    if (!(end > 0 && end < DENSEST && end / start < WIDEST)) {
      return true;
    }
    double kappa = isotherm.state(end).isentropicExponent();
    double before = isotherm.pressure(start);
    double peak = before * Math.pow(end / start, kappa);
    double load = load(spring, peak);
    if (peak > pressureLimit || load > survivor.rod().rating() || load > survivor.tube().rating()) {
      return true;
    }
    return critical(survivor, spring, travel.longest()) < Assessment.LEAST_BUCKLING_FACTOR * load
        && mayBuckle(survivor, spring, mass, start, before, kappa);
  }

  private boolean mayBuckle(
      Survivor survivor, GasSpring spring, double mass, double start, double before, double kappa) {
    Travel travel = survivor.path().travel();
    double step = (travel.longest() - travel.shortest()) / PIECES;
    for (int i = 0; i < PIECES; i++) {
      double from = travel.shortest() + i * step;
      double ratio = density(survivor, spring, mass, from) / start;
      double load = load(spring, before * Math.pow(ratio, kappa));
      if (critical(survivor, spring, from + step) < Assessment.LEAST_BUCKLING_FACTOR * load) {
        return true;
      }
    }
    return false;
  }

  private double density(Survivor survivor, GasSpring spring, double mass, double length) {
    return mass / spring.gasVolume(survivor.extended() - length, kelvin);
  }

  private double load(GasSpring spring, double pressure) {
    return (pressure - ATMOSPHERE) * spring.cylinder().rodArea() + spring.friction(kelvin);
  }

  private static double critical(Survivor survivor, GasSpring spring, double length) {
    return SteppedColumn.of(spring, length, survivor.tube().lengthToCentre()).criticalLoad();
  }
}
