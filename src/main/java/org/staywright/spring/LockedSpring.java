package org.staywright.spring;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.staywright.gas.BeyondEquation;
import org.staywright.gas.Isentrope;
import org.staywright.gas.Isotherm;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * A locking spring held at one place: two closed sides, one pressed and one eased by a deflection δ
 * (above zero where the rod goes in). Forces are what it holds beyond its open force there.
 *
 * <p>Elastic: a force balance on the piston, F = (p1 − p0)·A_b − (p2 − p0)·A_a, each side a closed
 * gas, at constant temperature when slow, at constant entropy when fast. Rigid: {@link LockedOil}.
 * The other way than it is rigid, a spring is taken to give as an elastic one does: our assumption.
 */
public final class LockedSpring {

  /** Beyond this nothing is computed, Pa. */
  public static final double MOST_PRESSURE = 800e5;

  private static final int STEPS = 32;
  private static final int EVALUATIONS = 200;

  private final LockingSpring spring;
  private final double compression;
  private final double kelvin;
  private final Isotherm isotherm;
  private final double density;
  private final double pressure;
  private final double fullSide;
  private final double rodSide;

  /**
   * @param spring what is locked
   * @param gasMass in it, kg
   * @param compression x0 where it is locked, m
   * @param kelvin of gas and oil; the oil's growth takes the same share of either side
   */
  public LockedSpring(LockingSpring spring, double gasMass, double compression, double kelvin) {
    this.spring = spring;
    this.compression = compression;
    this.kelvin = kelvin;
    Bound place = Bound.between(0, Unit.MILLIMETRE.of(spring.stroke()), "mm");
    place.require("compression", Unit.MILLIMETRE.of(compression));
    isotherm = Isotherm.at(kelvin);
    density = gasMass / spring.gasVolume(compression, kelvin);
    pressure = isotherm.pressure(density);
    double room = spring.roomLeft(compression, kelvin);
    fullSide = room * spring.fullSide(compression);
    rodSide = room * spring.rodSide(compression);
  }

  /** Force beyond the open force after a slow deflection, N. */
  public double slow(double deflection) {
    return rigid(deflection)
        ? oil(deflection).stiffness() * deflection
        : force(slowFull(deflection), slowRod(deflection));
  }

  /** The same after one too fast for heat to pass; oil is as stiff either way here. */
  public double fast(double deflection) {
    return rigid(deflection) ? slow(deflection) : force(fastFull(deflection), fastRod(deflection));
  }

  /** Slope of the slow force where the rod begins to go in, N/m. */
  public double stiffness() {
    if (spring.locking().rigidPushed()) {
      return oil(0).stiffness();
    }
    double perDensity = isotherm.state(density).pressurePerDensity();
    double full = Math.pow(spring.boreArea(), 2) / fullSide;
    double rod = Math.pow(spring.ringArea(), 2) / rodSide;
    return density * perDensity * (full + rod);
  }

  /** Slope of the open spring's slow force at the same place, N/m. */
  public double openStiffness() {
    double perDensity = isotherm.state(density).pressurePerDensity();
    return density * perDensity * Math.pow(spring.rodArea(), 2) / (fullSide + rodSide);
  }

  /** The greatest deflection inwards that stroke, gas and lock allow, m. */
  public double greatest() {
    double low = 0;
    double high = spring.stroke() - compression;
    if (fault(high) == null) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (fault(middle) == null) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The deflection itself, or a refusal that says how far it may go and why. */
  public double require(double deflection) {
    String code = fault(deflection);
    if (code == null) {
      return deflection;
    }
    double least = code.equals("locked-stroke") ? -Unit.MILLIMETRE.of(compression) : 0;
    double most = Math.floor(Unit.MILLIMETRE.of(greatest()) * 100) / 100;
    Bound bound = Bound.between(least, most, "mm");
    throw new Refusal(new Fault("deflection", Unit.MILLIMETRE.of(deflection), bound.text(), code));
  }

  /**
   * How far the rod goes in slowly under a load beyond the open force.
   *
   * @param load N, above zero
   * @param accuracy of the deflection, m
   * @return m; refused, with the bracket searched, where stroke, gas or lock do not hold the load
   */
  public double deflection(double load, double accuracy) {
    if (load == 0) {
      return 0;
    }
    double most = greatest();
    double held = slow(most);
    if (!(load >= 0 && load <= held)) {
      Bound bound = Bound.between(0, held, "N");
      String bracket = bound.text() + " (δ ≤ " + Unit.MILLIMETRE.of(most) + " mm)";
      throw new Refusal(new Fault("load", load, bracket, "locked-load"));
    }
    return new BrentSolver(accuracy).solve(EVALUATIONS, x -> slow(x) - load, 0, most);
  }

  /**
   * The place over the stroke where a spring is softest when locked.
   *
   * @param accuracy relative, of the place
   * @return compression, m
   */
  public static double softest(
      LockingSpring spring, double gasMass, double kelvin, double accuracy) {
    double step = spring.stroke() / STEPS;
    int best = 0;
    for (int i = 1; i <= STEPS; i++) {
      if (stiffness(spring, gasMass, i * step, kelvin)
          < stiffness(spring, gasMass, best * step, kelvin)) {
        best = i;
      }
    }
    if (best == 0 || best == STEPS) {
      return best * step;
    }
    return new BrentOptimizer(accuracy, accuracy * step)
        .optimize(
            new MaxEval(EVALUATIONS),
            GoalType.MINIMIZE,
            new UnivariateObjectiveFunction(x -> stiffness(spring, gasMass, x, kelvin)),
            new SearchInterval((best - 1) * step, (best + 1) * step))
        .getPoint();
  }

  private static double stiffness(LockingSpring spring, double gas, double place, double kelvin) {
    return new LockedSpring(spring, gas, Math.min(place, spring.stroke()), kelvin).stiffness();
  }

  /** What forbids a deflection, null where nothing does. */
  private String fault(double deflection) {
    if (!(deflection >= -compression && deflection <= spring.stroke() - compression)) {
      return "locked-stroke";
    }
    double held;
    try {
      held = Math.abs(fast(deflection));
      if (greatestPressure(deflection) > MOST_PRESSURE) {
        return "locked-gas";
      }
    } catch (BeyondEquation gas) {
      return "locked-gas";
    }
    return held > spring.lockForce() ? "locked-force" : null;
  }

  private double greatestPressure(double deflection) {
    if (rigid(deflection)) {
      return pressure + Math.abs(slow(deflection)) / oil(deflection).area();
    }
    return Math.max(fastFull(deflection), fastRod(deflection));
  }

  private boolean rigid(double deflection) {
    return deflection >= 0 ? spring.locking().rigidPushed() : spring.locking().rigidPulled();
  }

  private LockedOil oil(double deflection) {
    return deflection >= 0
        ? LockedOil.of(spring, spring.boreArea(), fullSide)
        : LockedOil.of(spring, spring.ringArea(), rodSide);
  }

  private double force(double full, double rod) {
    return (full - pressure) * spring.boreArea() - (rod - pressure) * spring.ringArea();
  }

  private double slowFull(double deflection) {
    return isotherm.pressure(fullDensity(deflection));
  }

  private double slowRod(double deflection) {
    return isotherm.pressure(rodDensity(deflection));
  }

  private double fastFull(double deflection) {
    return Isentrope.pressure(density, kelvin, fullDensity(deflection));
  }

  private double fastRod(double deflection) {
    return Isentrope.pressure(density, kelvin, rodDensity(deflection));
  }

  private double fullDensity(double deflection) {
    return density * fullSide / (fullSide - spring.boreArea() * deflection);
  }

  private double rodDensity(double deflection) {
    return density * rodSide / (rodSide + spring.ringArea() * deflection);
  }
}
