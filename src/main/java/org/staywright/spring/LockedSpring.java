package org.staywright.spring;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.jspecify.annotations.Nullable;
import org.staywright.gas.BeyondEquation;
import org.staywright.gas.Isotherm;
import org.staywright.gas.ShutGas;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * A locking spring held at one place: two closed sides, one pressed and one eased by a deflection δ
 * (above zero where the rod goes in). Forces are what it holds beyond its open force there.
 *
 * <p>Elastic: a force balance on the piston, F = (p1 − p0)·A_b − (p2 − p0)·A_a, each side a closed
 * gas, at constant temperature when slow, at constant entropy when fast. An eased side gets no
 * colder than nitrogen is known here: its pressure comes out too high then, and so the deflection
 * under a load too great. Rigid: {@link LockedOil}. The other way than it is rigid, a spring is
 * taken to give as an elastic one does: our assumption.
 */
public final class LockedSpring {

  /** Beyond this nothing is computed, Pa. */
  public static final double MOST_PRESSURE = 800e5;

  /** To which a deflection is found, m. */
  public static final double ACCURACY = 1e-10;

  /** The same as a share of it. */
  private static final double RELATIVE = 1e-12;

  private static final int ORDER = 5;
  private static final int STEPS = 32;
  private static final int EVALUATIONS = 200;

  private final LockingSpring spring;
  private final Cylinder cylinder;
  private final double compression;
  private final Isotherm isotherm;
  private final ShutGas gas;
  private final double density;
  private final double pressure;
  private final double fullSide;
  private final double rodSide;

  /** Not a number until somebody asks. */
  private volatile double greatest = Double.NaN;

  /**
   * @param spring what is locked
   * @param gasMass in it, kg
   * @param compression x0 where it is locked, m
   * @param kelvin of gas and oil; the oil's growth takes the same share of either side
   */
  public LockedSpring(LockingSpring spring, double gasMass, double compression, double kelvin) {
    this.spring = spring;
    cylinder = spring.cylinder();
    this.compression = compression;
    Bound place = Bound.between(0, Unit.MILLIMETRE.of(spring.stroke()), "mm");
    place.require("compression", Unit.MILLIMETRE.of(compression));
    isotherm = Isotherm.at(kelvin);
    density = gasMass / spring.gasVolume(compression, kelvin);
    pressure = isotherm.pressure(density);
    gas = new ShutGas(density, kelvin);
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
    double full = Math.pow(cylinder.boreArea(), 2) / fullSide;
    double rod = Math.pow(cylinder.ringArea(), 2) / rodSide;
    return density * perDensity * (full + rod);
  }

  /** Slope of the open spring's slow force at the same place, N/m. */
  public double openStiffness() {
    double perDensity = isotherm.state(density).pressurePerDensity();
    return density * perDensity * Math.pow(cylinder.rodArea(), 2) / (fullSide + rodSide);
  }

  /** The greatest deflection inwards that stroke, gas and lock allow, m. */
  public double greatest() {
    if (Double.isNaN(greatest)) {
      greatest = tooMuch(0) < 0 ? last(this::tooMuch, spring.lockForce()) : 0;
    }
    return greatest;
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
   * How far the rod goes in slowly under a load beyond the open force; where it comes down on its
   * stop, up to there. Whether the lock holds that load is another question.
   *
   * @param load N; below zero the rod is lifted and does not go in
   * @return m, to {@link #ACCURACY}; refused where the gas cannot be computed as far as that
   */
  public double slowDeflection(double load) {
    return deflection(this::slow, load);
  }

  /** The same under a load that comes at once, too fast for heat to pass. */
  public double fastDeflection(double load) {
    return deflection(this::fast, load);
  }

  private double deflection(UnivariateFunction force, double load) {
    if (load <= 0) {
      return 0;
    }
    double deflection = last(here -> force.value(here) - load, load);
    if (deflection < strokeLeft()) {
      // Refuses where the gas ends before it holds the load.
      force.value(deflection + ACCURACY);
    }
    return deflection;
  }

  /**
   * The last deflection at which something that rises along the way is not above zero, m.
   *
   * @param rising below zero at no deflection
   * @param load that is reached about there, N, above zero
   */
  private double last(UnivariateFunction rising, double load) {
    double end = strokeLeft();
    double low = 0;
    double high = Math.min(load / stiffness(), end);
    double above = whereKnown(rising, high);
    while (above <= 0 && high < end) {
      low = high;
      high = Math.min(2 * high, end);
      above = whereKnown(rising, high);
    }
    while (Double.isNaN(above) && high - low > ACCURACY) {
      double middle = (low + high) / 2;
      double there = whereKnown(rising, middle);
      if (there <= 0) {
        low = middle;
      } else {
        high = middle;
        above = there;
      }
    }
    if (!(above > 0)) {
      return Double.isNaN(above) ? low : high;
    }
    return new BracketingNthOrderBrentSolver(RELATIVE, ACCURACY, 0, ORDER)
        .solve(EVALUATIONS, rising, low, high, AllowedSolution.LEFT_SIDE);
  }

  /** Not a number where the gas cannot be computed. */
  private static double whereKnown(UnivariateFunction function, double deflection) {
    try {
      return function.value(deflection);
    } catch (BeyondEquation beyond) {
      return Double.NaN;
    }
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
  private @Nullable String fault(double deflection) {
    if (!(deflection >= -compression && deflection <= strokeLeft())) {
      return "locked-stroke";
    }
    try {
      Held held = held(deflection);
      if (held.pressure > MOST_PRESSURE) {
        return "locked-gas";
      }
      return held.force > spring.lockForce() ? "locked-force" : null;
    } catch (BeyondEquation gas) {
      return "locked-gas";
    }
  }

  /** By how much a deflection passes the nearer of both limits, N; not above zero within. */
  private double tooMuch(double deflection) {
    Held held = held(deflection);
    return Math.max(
        held.force - spring.lockForce(), (held.pressure - MOST_PRESSURE) * cylinder.boreArea());
  }

  /**
   * What a fast deflection takes.
   *
   * @param force its size, N
   * @param pressure the greater of both sides, Pa
   */
  private record Held(double force, double pressure) {}

  private Held held(double deflection) {
    if (rigid(deflection)) {
      double force = Math.abs(slow(deflection));
      return new Held(force, pressure + force / oil(deflection).area());
    }
    double full = fastFull(deflection);
    double rod = fastRod(deflection);
    return new Held(Math.abs(force(full, rod)), Math.max(full, rod));
  }

  private double strokeLeft() {
    return spring.stroke() - compression;
  }

  private boolean rigid(double deflection) {
    return deflection >= 0 ? spring.locking().rigidPushed() : spring.locking().rigidPulled();
  }

  private LockedOil oil(double deflection) {
    return deflection >= 0
        ? LockedOil.of(cylinder, cylinder.boreArea(), fullSide)
        : LockedOil.of(cylinder, cylinder.ringArea(), rodSide);
  }

  private double force(double full, double rod) {
    return (full - pressure) * cylinder.boreArea() - (rod - pressure) * cylinder.ringArea();
  }

  private double slowFull(double deflection) {
    return isotherm.pressure(fullDensity(deflection));
  }

  private double slowRod(double deflection) {
    return isotherm.pressure(rodDensity(deflection));
  }

  private double fastFull(double deflection) {
    return gas.pressure(fullDensity(deflection));
  }

  private double fastRod(double deflection) {
    return gas.pressure(rodDensity(deflection));
  }

  private double fullDensity(double deflection) {
    return density * fullSide / (fullSide - cylinder.boreArea() * deflection);
  }

  private double rodDensity(double deflection) {
    return density * rodSide / (rodSide + cylinder.ringArea() * deflection);
  }
}
