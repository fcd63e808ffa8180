package org.staywright.fit.mounts;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a search for mounts found.
 *
 * @param places pairs of mounts looked at
 * @param arrangements that fit, best first; they truly differ
 * @param near where nothing fits, those that miss least
 * @param obstacle why nothing fits, null where something does
 */
public record Found(
    int places,
    List<Arrangement> arrangements,
    List<Arrangement> near,
    @Nullable Obstacle obstacle) {

  public Found {
    arrangements = List.copyOf(arrangements);
    near = List.copyOf(near);
  }

  static Found nothing(int places, Obstacle obstacle) {
    return new Found(places, List.of(), List.of(), obstacle);
  }
}
