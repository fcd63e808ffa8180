package org.staywright.fit.clear;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.part.Fitting;
import org.staywright.part.Range;

/**
 * Finds the smallest single change of a job that makes a near part fit, by the plain {@link
 * Assessment}. No knob here gives up that a load stays open or shut.
 */
public final class Clearing {

  /** Rows worth solving: it takes some ten milliseconds each. */
  public static final int ROWS = 10;

  /** Efforts tried, up to 3.6 times what one spring more costs. */
  private static final int LEVELS = 10;

  /** One spring more or less, or another end fitting. */
  private static final double SWAP = 1;

  private static final int MOST_SPRINGS = 8;

  private final Job job;
  private final Retrial.Changed unchanged;
  private final Range range;
  private final List<Knob> free;
  private final List<Knob> asked;

  /**
   * @param knobs what may be turned
   */
  public Clearing(Job job, Range range, List<Knob> knobs) {
    this.job = job;
    this.range = range;
    unchanged = Retrial.Changed.of(job);
    free = knobs.stream().filter(knob -> !knob.asked()).toList();
    asked = knobs.stream().filter(Knob::asked).toList();
  }

  /**
   * The smallest change that clears a near part; empty where no single one does, and where no
   * spring is needed: a load that is harder to move would be no mend.
   */
  public Optional<Change> of(Fit near) {
    if (near.blockedBy().stream().anyMatch(each -> each.criterion() == Criterion.NO_GAIN)) {
      return Optional.empty();
    }
    Retrial trial = new Retrial(range, near);
    return smallest(near, trial, free, true).or(() -> smallest(near, trial, asked, false));
  }

  private Optional<Change> smallest(Fit near, Retrial trial, List<Knob> knobs, boolean swaps) {
    Turning turning = new Turning(trial, knobs);
    boolean toSwap = swaps;
    for (int level = 0; level <= LEVELS; level++) {
      double cost = Turning.LEAST * Math.pow(Turning.RISE, level);
      Optional<Turning.Turned> turned = turning.to(cost);
      if (toSwap && cost >= SWAP) {
        toSwap = false;
        Optional<Change> swap =
            turned.isPresent() && turned.get().cost() < SWAP ? Optional.empty() : swap(near, trial);
        if (swap.isPresent()) {
          return swap;
        }
      }
      if (turned.isPresent()) {
        return turned.map(Turning.Turned::change);
      }
    }
    return Optional.empty();
  }

  /** A column is one, without end fittings. */
  private Optional<Change> swap(Fit near, Retrial trial) {
    if (!job.fitted()) {
      return Optional.empty();
    }
    return IntStream.of(near.count() + 1, near.count() - 1)
        .filter(count -> count >= 1 && count <= MOST_SPRINGS && trial.fits(unchanged, count, 0))
        .mapToObj(
            count ->
                new Change(
                    "/springCounts",
                    BigDecimal.valueOf(near.count()),
                    BigDecimal.valueOf(count),
                    ""))
        .findFirst()
        .or(() -> fitting(near, trial, true))
        .or(() -> fitting(near, trial, false));
  }

  /** The end fitting nearest in length that clears it, on one end. */
  private Optional<Change> fitting(Fit near, Retrial trial, boolean rod) {
    Fitting old = rod ? near.rodFitting() : near.tubeFitting();
    Job.FittingWish wish = rod ? job.rodEnd() : job.tubeEnd();
    if (old == null) {
      return Optional.empty();
    }
    return range.fittings().stream()
        .filter(fitting -> fitting.type().endsASpring())
        .filter(fitting -> old.thread().equals(fitting.thread()) && !old.equals(fitting))
        .sorted(Comparator.comparingDouble(fitting -> apart(fitting, old)))
        .filter(
            fitting ->
                trial.fits(unchanged.with(with(fitting, rod)), near.count(), longer(fitting, old)))
        .map(
            fitting ->
                new Change(
                    rod ? "/fittings/rodEnd" : "/fittings/tubeEnd",
                    wish.code(),
                    fitting.number(),
                    ""))
        .findFirst();
  }

  private static double longer(Fitting one, Fitting other) {
    return one.lengthToCentre() - other.lengthToCentre();
  }

  private static double apart(Fitting one, Fitting other) {
    return Math.abs(longer(one, other));
  }

  private Job with(Fitting fitting, boolean rod) {
    Job.FittingWish wish = new Job.FittingWish(null, fitting.number());
    return rod ? job.with(wish, job.tubeEnd()) : job.with(job.rodEnd(), wish);
  }
}
