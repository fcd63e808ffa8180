package org.staywright.fit;

import java.util.List;
import org.staywright.gas.Isotherm;
import org.staywright.gas.IsothermFit;
import org.staywright.mechanism.Travel;
import org.staywright.part.Column;
import org.staywright.part.Range;
import org.staywright.spring.GasSpring;

/**
 * Fills the lanes with survivors, runs them, and reads what came out; used again block after block.
 */
final class Block {

  /** Errors of the polynomial count this many times before a verdict is trusted. */
  private static final double CAUTION = 4;

  private static final double ROUNDING = 1e-9;

  private final Job job;
  private final Range range;
  private final int[] counts;
  private final Load[] loads = Load.values();
  private final Lanes lanes = new Lanes();
  private final Lanes.Hand[] hands;
  private final double[][] fits = new double[Load.values().length][];
  private final PeakBound bound;
  private final boolean[] overloaded = new boolean[Lanes.WIDTH];
  private double error;
  private Travel travel;
  private boolean overCentre;

  Block(Job job, Range range, int[] counts, List<Survivor> survivors) {
    this.job = job;
    this.range = range;
    this.counts = counts;
    bound = new PeakBound(job);
    hands = new Lanes.Hand[counts.length];
    for (int c = 0; c < counts.length; c++) {
      hands[c] = new Lanes.Hand();
    }
    fit(survivors);
  }

  /** Polynomials over the densities that these springs reach. */
  private void fit(List<Survivor> survivors) {
    double lowest = PeakBound.DENSEST;
    double highest = 1;
    for (Survivor survivor : survivors) {
      GasSpring spring = range.gasSpring(survivor.row());
      double from = survivor.extended() - survivor.path().travel().longest();
      double to = survivor.extended() - survivor.path().travel().shortest();
      double cold = spring.gasVolume(from, job.conditions().coldest());
      double hot = spring.gasVolume(to, job.conditions().hottest());
      lowest = Math.min(lowest, mass(Load.WEAK, survivor) / cold);
      double dense = mass(Load.STRONG, survivor) / hot;
      if (dense > 0 && dense < PeakBound.DENSEST) {
        highest = Math.max(highest, dense);
      }
    }
    for (Load load : loads) {
      Isotherm isotherm = Isotherm.at(load.kelvin(job.conditions()));
      IsothermFit polynomial = IsothermFit.of(isotherm, Math.min(lowest, highest / 2), highest);
      fits[load.ordinal()] = polynomial.coefficients();
      error = Math.max(error, polynomial.error());
    }
  }

  private double mass(Load load, Survivor survivor) {
    return switch (load) {
      case NOMINAL -> range.column(Column.GAS_MASS)[survivor.row()];
      case WEAK -> range.column(Column.GAS_MASS_LOW)[survivor.row()] * survivor.gasLeft();
      case STRONG -> range.column(Column.GAS_MASS_HIGH)[survivor.row()];
    };
  }

  void run(List<Survivor> survivors, Travel on) {
    travel = on;
    Behaviour asked = job.requirements().behaviour();
    lanes.rising = asked.risesFrom() == null ? null : Stretch.of(travel, asked.risesFrom(), null);
    lanes.still =
        asked.staysPut() ? Stretch.of(travel, asked.staysPutFrom(), asked.staysPutTo()) : null;
    Double centre = Figuring.overCentre(travel, 1);
    overCentre = asked.overCentreBy() == null || centre != null && centre <= asked.overCentreBy();
    for (int lane = 0; lane < survivors.size(); lane++) {
      Survivor survivor = survivors.get(lane);
      GasSpring spring = range.gasSpring(survivor.row());
      lanes.area[lane] = spring.rodArea();
      for (Load load : loads) {
        double kelvin = load.kelvin(job.conditions());
        Lanes.Gas gas = gas(load);
        gas.mass[lane] = mass(load, survivor);
        gas.base[lane] = spring.gasVolume(survivor.extended(), kelvin);
        gas.friction[lane] = spring.friction(kelvin);
      }
      overloaded[lane] =
          bound.exceeds(
              survivor,
              spring,
              lanes.strong.mass[lane],
              range.column(Column.PRESSURE_LIMIT)[survivor.row()]);
    }
    lanes.run(survivors.size(), travel, counts, fits, hands);
  }

  private Lanes.Gas gas(Load load) {
    return switch (load) {
      case NOMINAL -> lanes.nominal;
      case WEAK -> lanes.weak;
      case STRONG -> lanes.strong;
    };
  }

  /** True where a bound is not surely kept, or a requirement is neither surely met nor missed. */
  boolean doubtful(Survivor survivor, int lane, int c) {
    if (overloaded[lane]) {
      return true;
    }
    double stop = Figuring.stopLoad(job, travel, counts[c]);
    if (stop > survivor.rod().rating() || stop > survivor.tube().rating()) {
      return true;
    }
    Job.Requirements asked = job.requirements();
    double moment = error(lane, counts[c]);
    double force = moment / travel.hand();
    if (near(hands[c].open(lane, travel), asked.handOpenLimit(), force)
        || near(hands[c].close(lane, travel), asked.handCloseLimit(), force)) {
      return true;
    }
    if (lanes.rising != null && near(hands[c].rising[lane], 0, moment)
        || lanes.still != null && near(hands[c].still[lane], 0, moment)) {
      return true;
    }
    Double latch = asked.behaviour().maxLatchPush();
    if (latch != null && near(latchPush(lane, counts[c]), latch, force)) {
      return true;
    }
    double gravity = gravityOpen();
    if (gravity < 0 && near(holdRatio(lane, counts[c]), asked.minHoldRatio(), moment / -gravity)) {
      return true;
    }
    return asked.staysShut() && near(closedHold(lane, counts[c]), 0, moment);
  }

  private static boolean near(double has, double needed, double error) {
    return !(Math.abs(has - needed) > error);
  }

  /** How far the balance of moments may be off. */
  private double error(int lane, int count) {
    double pressure = lanes.strong.mass[lane] / lanes.weak.mass[lane] * lanes.strong.first[lane];
    double lever = 0;
    for (double each : travel.lever()) {
      lever = Math.max(lever, Math.abs(each));
    }
    return (CAUTION * error + ROUNDING) * count * lever * pressure;
  }

  /** The candidate as the lanes see it. */
  Candidate candidate(Survivor survivor, int lane, int c, SetPrice price) {
    Job.Requirements asked = job.requirements();
    Lanes.Hand hand = hands[c];
    double open = hand.open(lane, travel);
    double close = hand.close(lane, travel);
    Double hold = gravityOpen() < 0 ? holdRatio(lane, counts[c]) : null;
    double compressed = travel.shortest() - survivor.compressed();
    double extended = survivor.extended() - travel.longest();
    boolean flapStops = asked.openStop() == Job.OpenStop.FLAP_STOP;
    boolean fits =
        open <= asked.handOpenLimit()
            && close <= asked.handCloseLimit()
            && behaves(lane, c)
            && (hold == null || hold >= asked.minHoldRatio())
            && compressed >= asked.compressedReserve()
            && (!flapStops || extended >= asked.extendedReserve())
            && (!asked.staysShut() || closedHold(lane, counts[c]) > 0)
            && survivor.path().blocker() == null;
    return new Candidate(
        survivor.row(),
        counts[c],
        fits,
        hand.rms(lane, travel),
        Requirement.margin(
            job, Requirement.handMargin(asked, open, close), hold, compressed, extended),
        price.amount(),
        price.days(),
        null);
  }

  private boolean behaves(int lane, int c) {
    Double latch = job.requirements().behaviour().maxLatchPush();
    return overCentre
        && (lanes.rising == null || hands[c].rising[lane] < 0)
        && (lanes.still == null || hands[c].still[lane] > 0)
        && (latch == null || latchPush(lane, counts[c]) <= latch);
  }

  private double latchPush(int lane, int count) {
    return -closedHold(lane, count) / travel.hand();
  }

  private double gravityOpen() {
    return travel.heavy()[travel.last()];
  }

  private double holdRatio(int lane, int count) {
    int last = travel.last();
    return count * lanes.weak.last[lane] * travel.lever()[last] / -gravityOpen();
  }

  private double closedHold(int lane, int count) {
    return -(count * lanes.strong.first[lane] * travel.lever()[0] + travel.light()[0]);
  }
}
