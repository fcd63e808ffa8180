package org.staywright.fit.rank;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.EndSpeed;
import org.staywright.fit.assess.Hung;
import org.staywright.fit.assess.Path;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SetPrice;
import org.staywright.fit.job.SpringState;
import org.staywright.gas.Isotherm;
import org.staywright.gas.IsothermFit;
import org.staywright.mechanism.Travel;
import org.staywright.part.Column;
import org.staywright.part.Part;
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
  private final Criteria criteria;
  private final int[] counts;
  private final Lanes lanes = new Lanes();
  private final Lanes.Hand[] hands;
  private final double[][] fits = new double[SpringState.values().length][];
  private final PeakBound bound;
  private final boolean[] overloaded = new boolean[Lanes.WIDTH];
  private double error;
  private Travel travel;
  private Glance glance;

  /**
   * @param survivors one at least
   */
  Block(Job job, Range range, Criteria criteria, int[] counts, List<Survivor> survivors) {
    this.job = job;
    this.range = range;
    this.criteria = criteria;
    this.counts = counts;
    bound = new PeakBound(job);
    hands = new Lanes.Hand[counts.length];
    for (int c = 0; c < counts.length; c++) {
      hands[c] = new Lanes.Hand();
    }
    Path first = survivors.get(0).path();
    travel = first.travel();
    glance = new Glance(job, travel, first.alongside(), lanes);
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
      lowest = Math.min(lowest, mass(SpringState.WEAK, survivor) / cold);
      double dense = mass(SpringState.STRONG, survivor) / hot;
      if (dense > 0 && dense < PeakBound.DENSEST) {
        highest = Math.max(highest, dense);
      }
    }
    for (SpringState state : SpringState.values()) {
      Isotherm isotherm = Isotherm.at(state.kelvin(job.conditions()));
      IsothermFit polynomial = IsothermFit.of(isotherm, Math.min(lowest, highest / 2), highest);
      fits[state.ordinal()] = polynomial.coefficients();
      error = Math.max(error, polynomial.error());
    }
  }

  private double mass(SpringState state, Survivor survivor) {
    return state.gasMass(range, survivor.row(), survivor.gasLeft());
  }

  void run(List<Survivor> survivors, Path path) {
    travel = path.travel();
    glance = new Glance(job, travel, path.alongside(), lanes);
    for (int lane = 0; lane < survivors.size(); lane++) {
      Survivor survivor = survivors.get(lane);
      GasSpring spring = range.gasSpring(survivor.row());
      lanes.area[lane] = spring.cylinder().rodArea();
      for (SpringState state : SpringState.values()) {
        double kelvin = state.kelvin(job.conditions());
        Lanes.Gas gas = lanes.of(state);
        gas.mass[lane] = mass(state, survivor);
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
    lanes.run(survivors.size(), travel, path.alongside(), counts, fits, hands);
  }

  /**
   * The candidate as the lanes see it; empty where a bound is not surely kept, or a requirement is
   * neither surely met nor missed.
   */
  Optional<Candidate> candidate(Survivor survivor, int lane, int c, SetPrice price) {
    double stop = glance.stopLoad(lane, counts[c]);
    double moment = error(lane, counts[c]);
    double pull = moment / (counts[c] * Math.abs(travel.lever()[travel.last()]));
    double rating = Math.min(survivor.rod().rating(), survivor.tube().rating());
    if (overloaded[lane] || stop > 0 && stop + pull > rating) {
      return Optional.empty();
    }
    Figures figures =
        glance.figures(hands[c], lane, counts[c], survivor.compressed(), survivor.extended());
    if (glance.doubtful(criteria, figures, hands[c], lane, counts[c], moment)) {
      return Optional.empty();
    }
    List<Blocker> missed = criteria.missed(figures);
    Blocker stopped = survivor.path().blocker();
    return Optional.of(
        new Candidate(
            survivor.row(),
            counts[c],
            Misses.of(missed, stopped),
            figures.hand().rms(),
            criteria.margin(figures),
            new Once<>(() -> speed(survivor, counts[c])),
            price.amount(),
            price.days(),
            null));
  }

  /** At its open end, as the plain assessment has it. */
  private @Nullable Double speed(Survivor survivor, int count) {
    Part part = range.part(survivor.row());
    return EndSpeed.of(job, survivor.path(), Hung.of(part, count, survivor.rod(), survivor.tube()));
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
}
