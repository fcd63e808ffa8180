package org.staywright.mechanism;

import java.util.function.Function;

/** A mechanism whose spring hangs on two mounts, and might hang elsewhere. */
public sealed interface Mounted extends Mechanism permits HingedFlap, StraightLift {

  Mounts mounts();

  /** The same with the spring hung elsewhere. */
  Mounted at(Mounts mounts);

  /** What differs by mechanism, one side each. */
  default <T> T as(Function<HingedFlap, T> flap, Function<StraightLift, T> lift) {
    return as(flap, lift, none -> null, none -> null);
  }

  /** dL/dq, m/rad or 1. */
  double lever(double q);
}
