package org.staywright.fit.job;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a part does in a job: of one kind where a hand moves the load, of another under a seat. */
public sealed interface Outcome permits Figures, SeatFigures {

  /** What differs by kind, one side each. */
  <T> T as(Function<Figures, T> hand, Function<SeatFigures, T> seat);

  /** What it has of what is asked, SI. */
  double has(Term term, @Nullable Bare bare);

  /** Where the travel ends, rad or m. */
  double end();

  /** The length at which its springs are fully extended, counted as the mechanism counts it, m. */
  double extended();

  /** With which it meets its open stop, m/s; null where nothing damps. */
  @Nullable Double endSpeed();

  /** What the order of least effort goes by, N. */
  double effort();

  /** Highest absolute gas pressure, Pa. */
  double peakPressure();

  /** Least buckling load over force. */
  double bucklingFactor();
}
