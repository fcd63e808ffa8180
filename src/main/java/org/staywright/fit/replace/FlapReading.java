package org.staywright.fit.replace;

import java.util.random.RandomGenerator;

/**
 * A scale at the handle that carries the flap, its springs off, pulled square to the line from
 * hinge to handle.
 *
 * @param force it shows, N
 * @param slope of the flap meanwhile: of the line from hinge to handle above level, rad
 */
public record FlapReading(Reading force, Reading slope) {

  FlapReading drawn(RandomGenerator random) {
    return new FlapReading(force.drawn(random), slope.drawn(random));
  }
}
