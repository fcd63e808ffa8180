package org.staywright.mechanism;

import java.util.Optional;
import java.util.function.Function;

/**
 * A mechanism that moves a rigid load in the plane, its spring on two mounts that might be
 * elsewhere.
 */
public sealed interface Rigid extends Mechanism permits HingedFlap, StraightLift {

  /** What differs by mechanism, one side each. */
  default <T> T as(Function<HingedFlap, T> flap, Function<StraightLift, T> lift) {
    return side(new Sides<>(flap, lift, none -> null, none -> null));
  }

  /** Where the load stands at q. */
  Pose pose(double q);

  Mounts mounts();

  /** The same with the spring hung elsewhere. */
  Rigid at(Mounts mounts);

  /** dL/dq, m/rad or 1. */
  double lever(double q);

  /** The same with its travel ending elsewhere, rad or m. */
  Rigid to(double end);

  /** At the start of the travel, m. */
  Point centreOfMass();

  /** Unit vector against gravity. */
  Point up();

  Masses masses();

  @Override
  default Optional<Rigid> rigid() {
    return Optional.of(this);
  }

  @Override
  default Masses shares() {
    Masses all = masses();
    return new Masses(1, all.heaviest() / all.nominal(), all.lightest() / all.nominal());
  }

  /** What acts in the direction of q besides gravity, N·m or N. */
  default double besides(double q) {
    return 0;
  }
}
