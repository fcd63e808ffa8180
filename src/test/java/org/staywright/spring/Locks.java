package org.staywright.spring;

/** Invented springs that lock. */
final class Locks {

  private Locks() {}

  /** Rod 10 in a bore of 19, stroke 160, 350 N. */
  static LockingSpring strut(Locking locking) {
    return spring(0.010, 0.022, 0.019, 0.16, 350, 2e-6, 2e-6, locking);
  }

  /** Rod 10 in a bore of 22 with a sleeve outside, stroke 120, 350 N. */
  static LockingSpring column() {
    return spring(0.010, 0.035, 0.022, 0.12, 350, 3e-6, 36e-6, Locking.ELASTIC);
  }

  static LockingSpring spring(
      double rod,
      double tube,
      double bore,
      double stroke,
      double force,
      double full,
      double side,
      Locking locking) {
    double gas = Math.PI / 4 * bore * bore * stroke + full + side;
    GasSpring open =
        new GasSpring(
            new Cylinder(
                rod,
                tube,
                bore,
                stroke,
                2 * stroke + 0.08,
                stroke + 0.08,
                0.05 * force,
                1.5,
                gas,
                1e-6),
            force);
    return new LockingSpring(open, full, side, locking, 8000);
  }
}
