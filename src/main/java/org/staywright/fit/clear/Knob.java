package org.staywright.fit.clear;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.staywright.fit.job.Job;

/**
 * A number of a job that could be changed in small steps one way. Jobs once made are kept, so that
 * many parts can be tried on them; not to be shared between threads.
 */
public final class Knob {

  private final String path;
  private final String unit;
  private final BigDecimal from;
  private final BigDecimal step;
  private final double ease;
  private final boolean asked;
  private final Function<BigDecimal, Optional<Job>> job;
  private final Map<Integer, Optional<Retrial.Changed>> made = new HashMap<>();

  /**
   * @param path JSON pointer of the number in the job
   * @param unit its symbol
   * @param from as it is, in the unit
   * @param step smallest change worth telling apart, negative for less
   * @param ease a change that costs as little as one spring more: same unit, above zero
   * @param asked whether it is a requirement, which is given way on only where nothing else helps
   * @param job with another number; empty where that is out of bounds
   */
  public Knob(
      String path,
      String unit,
      BigDecimal from,
      BigDecimal step,
      double ease,
      boolean asked,
      Function<BigDecimal, Optional<Job>> job) {
    this.path = path;
    this.unit = unit;
    this.from = from;
    this.step = step;
    this.ease = ease;
    this.asked = asked;
    this.job = job;
  }

  boolean asked() {
    return asked;
  }

  /** Steps that some effort buys. */
  int steps(double cost) {
    return (int) Math.floor(cost * ease / Math.abs(step.doubleValue()));
  }

  double cost(int steps) {
    return steps * Math.abs(step.doubleValue()) / ease;
  }

  Optional<Retrial.Changed> at(int steps) {
    return made.computeIfAbsent(steps, n -> job.apply(value(n)).map(Retrial.Changed::of));
  }

  /** The farthest step there is, no farther than so many, from one that there is. */
  int reach(int from, int steps) {
    if (steps <= from || at(steps).isPresent()) {
      return Math.max(from, steps);
    }
    int low = from;
    int high = steps;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (at(middle).isPresent()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  Change change(int steps) {
    return new Change(path, from, value(steps), unit);
  }

  private BigDecimal value(int steps) {
    return from.add(step.multiply(BigDecimal.valueOf(steps)));
  }
}
