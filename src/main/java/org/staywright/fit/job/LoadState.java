package org.staywright.fit.job;

import java.util.function.Function;
import org.staywright.mechanism.Travel;
import org.staywright.part.Coded;

/** What a load may weigh. */
public enum LoadState implements Coded {
  NOMINAL(Travel::load),
  HEAVY(Travel::heavy),
  LIGHT(Travel::light);

  private final Function<Travel, double[]> load;

  LoadState(Function<Travel, double[]> load) {
    this.load = load;
  }

  /** Its generalised load at every sample, positive where it opens, N·m or N. */
  public double[] of(Travel travel) {
    return load.apply(travel);
  }
}
