package org.staywright.fit.clear;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Turns the knobs of a job further and further, all by the same effort, until one of them makes a
 * near part fit. A fit that comes and goes between two efforts tried is passed over.
 */
final class Turning {

  /** The first effort tried, where one spring more costs 1, and how it rises. */
  static final double LEAST = 1.0 / 16;

  static final double RISE = 1.5;
  private static final int NONE = -1;

  private final Retrial trial;
  private final List<Knob> knobs;
  private final int[] tried;

  Turning(Retrial trial, List<Knob> knobs) {
    this.trial = trial;
    this.knobs = knobs;
    tried = new int[knobs.size()];
  }

  /** A change and what it costs. */
  record Turned(Change change, double cost) {}

  /** The least change up to a cost, each knob taken as far as it goes; empty where none does. */
  Optional<Turned> to(double cost) {
    int[] farthest =
        IntStream.range(0, tried.length)
            .map(i -> knobs.get(i).reach(tried[i], knobs.get(i).steps(cost)))
            .toArray();
    int[] found =
        IntStream.range(0, tried.length)
            .parallel()
            .map(i -> found(knobs.get(i), tried[i], farthest[i]))
            .toArray();
    Turned least = null;
    for (int i = 0; i < tried.length; i++) {
      Knob knob = knobs.get(i);
      if (found[i] != NONE && (least == null || knob.cost(found[i]) < least.cost)) {
        least = new Turned(knob.change(found[i]), knob.cost(found[i]));
      }
      tried[i] = farthest[i];
    }
    return Optional.ofNullable(least);
  }

  /** The first step that fits, {@link #NONE} where the farthest does not. */
  private int found(Knob knob, int from, int to) {
    return to > from && trial.fits(knob, to) ? trial.first(knob, from, to) : NONE;
  }
}
