package org.staywright.motion;

/**
 * An orifice with what comes to it at one moment: a damping force for a speed, and the other way
 * round.
 *
 * @param orifice in the piston
 * @param fluid that must pass it
 */
public record Throttle(Orifice orifice, Orifice.Fluid fluid) {

  /**
   * Against the motion, not below zero, N.
   *
   * @param speed of the piston, m/s, above zero compressing
   */
  public double force(double speed) {
    return orifice.pressureDrop(orifice.speed(speed), fluid) * orifice.ring();
  }

  /** Speed in the hole over that of sound. */
  double mach(double speed) {
    return orifice.speed(speed) / fluid.speedOfSound();
  }

  /**
   * Speed of the piston at which damping takes up a force, m/s.
   *
   * @param force N, not below zero
   */
  public double speedAt(double force, boolean compressing) {
    double through = orifice.speedAt(force / orifice.ring(), fluid);
    return through / orifice.speed(compressing ? 1 : -1);
  }
}
