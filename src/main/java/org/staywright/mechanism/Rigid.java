package org.staywright.mechanism;

/** A mechanism that moves a rigid load in the plane: what small errors of its points are put to. */
public sealed interface Rigid extends Mechanism permits HingedFlap, StraightLift {

  Pose pose(double q);

  Mounts mounts();

  /** At the start of the travel, m. */
  Point centreOfMass();

  /** Unit vector against gravity. */
  Point up();

  Masses masses();

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
