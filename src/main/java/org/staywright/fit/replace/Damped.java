package org.staywright.fit.replace;

import org.staywright.part.Coded;

/** Whether a spring brakes before the end of its stroke. */
public enum Damped implements Coded {
  END_DAMPED,
  UNDAMPED;

  static Damped of(boolean damped) {
    return damped ? END_DAMPED : UNDAMPED;
  }
}
