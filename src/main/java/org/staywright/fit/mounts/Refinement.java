package org.staywright.fit.mounts;

import java.util.Arrays;
import java.util.Objects;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.MersenneTwister;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * Moves the mounts of one candidate to where it does best, each step assessed plainly, so that
 * every requirement counts.
 *
 * <p>CMA-ES (N. Hansen, The CMA Evolution Strategy: A Tutorial, 2016, as Commons Math has it): the
 * aim has kinks wherever another requirement becomes the tightest, and this asks for no slopes.
 */
final class Refinement {

  private final Job job;
  private final Range range;
  private final Zones zones;
  private final Objective aim;
  private final int row;
  private final int count;
  private final Part part;
  private final Runnable tick;
  private @Nullable PlacedCandidate best;

  Refinement(Job job, Range range, Zones zones, int row, int count, Runnable tick) {
    this.tick = tick;
    this.job = job;
    this.range = range;
    this.zones = zones;
    this.row = row;
    this.count = count;
    aim = new Objective(job, Criteria.of(job));
    part = range.part(row);
  }

  /** The candidate where it is. */
  PlacedCandidate at(double[] share) {
    Mounts mounts = zones.at(share);
    if (!zones.open(mounts)) {
      return new PlacedCandidate(share, mounts, row, count, null, 2 * Objective.OUT);
    }
    Job there = job.at(mounts);
    Mechanism mechanism = there.mechanism();
    if (!mechanism.faults().isEmpty()) {
      return new PlacedCandidate(share, mounts, row, count, null, 2 * Objective.OUT);
    }
    Paths paths = new Paths(there);
    Assessment assessment = Assessment.of(there, paths, range, part, count);
    Fit fit = assessment.fit();
    double value = fit == null ? Objective.OUT * (1 + miss(mechanism)) : aim.of(fit);
    return new PlacedCandidate(share, mounts, row, count, fit, value);
  }

  /** How far the spring alone is from spanning, so that the search finds back, m. */
  private double miss(Mechanism mechanism) {
    Travel travel = mechanism.travel(mechanism.end());
    double shortest = part.spring().compressedLength();
    double longest = part.spring().extendedLength();
    return Math.min(
        1, Math.max(0, Math.max(shortest - travel.shortest(), travel.longest() - longest)));
  }

  /**
   * The best place found from a start.
   *
   * @param step first, as a share of the zones
   * @param evaluations at most, about
   */
  PlacedCandidate from(double[] start, double step, int evaluations, long seed) {
    PlacedCandidate first = at(start);
    best = first;
    int n = start.length;
    if (n == 0) {
      return first;
    }
    int population = 4 + (int) (3 * Math.log(n));
    double[] sigma = new double[n];
    Arrays.fill(sigma, step);
    CMAESOptimizer search =
        new CMAESOptimizer(
            evaluations / population, 0, true, 0, 0, new MersenneTwister(seed), false, null);
    search.optimize(
        new MaxEval(Integer.MAX_VALUE),
        new ObjectiveFunction(this::value),
        GoalType.MINIMIZE,
        new InitialGuess(start),
        new SimpleBounds(new double[n], ones(n)),
        new CMAESOptimizer.Sigma(sigma),
        new CMAESOptimizer.PopulationSize(population));
    return Objects.requireNonNull(best);
  }

  private static double[] ones(int n) {
    double[] ones = new double[n];
    Arrays.fill(ones, 1);
    return ones;
  }

  private double value(double[] share) {
    tick.run();
    PlacedCandidate place = at(share.clone());
    if (best == null || place.value() < best.value()) {
      best = place;
    }
    return place.fit() == null ? place.value() : aim.sloping(place.fit());
  }
}
