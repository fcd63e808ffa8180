package org.staywright.fit.job;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job.OpenStop;

/**
 * What is asked of the springs. SI.
 *
 * @param limits by criterion, those that are asked; 0 where it is asked by a yes
 * @param openStop what ends the travel; null under a seat
 * @param still where it is to stay put, null where that is not asked
 */
public record Requirements(
    Map<Criterion, Double> limits, @Nullable OpenStop openStop, @Nullable Still still) {

  public Requirements {
    Map<Criterion, Double> copy = new EnumMap<>(Criterion.class);
    copy.putAll(limits);
    limits = Collections.unmodifiableMap(copy);
  }

  /** With nothing else asked. */
  public static Requirements of(
      double maxHandForce,
      double minHoldRatio,
      double compressedReserve,
      double extendedReserve,
      OpenStop openStop) {
    return new Requirements(
        Map.of(
            Criterion.HAND_FORCE, maxHandForce,
            Criterion.HOLD_RATIO, minHoldRatio,
            Criterion.COMPRESSED_RESERVE, compressedReserve,
            Criterion.EXTENDED_RESERVE, extendedReserve),
        openStop,
        null);
  }

  /** The same with one thing more, or another limit. */
  public Requirements with(Criterion criterion, double limit) {
    Map<Criterion, Double> more = new EnumMap<>(Criterion.class);
    more.putAll(limits);
    more.put(criterion, limit);
    return new Requirements(more, openStop, still);
  }

  public Requirements with(Still stretch) {
    return new Requirements(limits, openStop, stretch);
  }

  /** What is asked, null where it is not. */
  public @Nullable Double limit(Criterion criterion) {
    return limits.get(criterion);
  }

  public boolean asks(Criterion criterion) {
    return limits.containsKey(criterion);
  }

  /** The common limit at the hand, N. */
  public double maxHandForce() {
    return limits.getOrDefault(Criterion.HAND_FORCE, Double.NaN);
  }

  /** Limit while opening, N. */
  public double handOpenLimit() {
    return limits.getOrDefault(Criterion.HAND_OPEN, maxHandForce());
  }

  /** Limit while closing, N. */
  public double handCloseLimit() {
    return limits.getOrDefault(Criterion.HAND_CLOSE, maxHandForce());
  }

  boolean oneHandLimit() {
    return !asks(Criterion.HAND_OPEN) && !asks(Criterion.HAND_CLOSE);
  }

  /** Stroke left at the shortest length, m. */
  public double compressedReserve() {
    return limits.getOrDefault(Criterion.COMPRESSED_RESERVE, Double.NaN);
  }

  /** Stroke left at the longest length, m. */
  public double extendedReserve() {
    return limits.getOrDefault(Criterion.EXTENDED_RESERVE, Double.NaN);
  }

  /** Whether anything is asked that only a motion can tell. */
  public boolean asksInTime() {
    return limits.keySet().stream().anyMatch(Criterion::inTime);
  }
}
