package org.staywright.fit.job;

/** What a part does in a job: of one kind where a hand moves the load, of another under a seat. */
public sealed interface Outcome permits Figures, SeatFigures {

  /** Where the travel ends, rad or m. */
  double end();

  /** What the order of least effort goes by, N. */
  double effort();

  /** Highest absolute gas pressure, Pa. */
  double peakPressure();

  /** Least buckling load over force. */
  double bucklingFactor();
}
