package org.staywright.motion;

/**
 * Where the energy of a motion went, from its beginning to its end, J.
 *
 * @param kinetic gained by what moves
 * @param load work that gravity, or what the table stands for, did
 * @param hand work the hand did
 * @param friction lost to it
 * @param damping lost in orifices and dampers
 * @param springs energy the springs gave: what their gas lost, or a plain spring's work
 * @param wall heat the springs' walls gave to their gas
 * @param air work the air outside did on the springs
 * @param kept damping that stayed in the gas as heat
 */
public record Energy(
    double kinetic,
    double load,
    double hand,
    double friction,
    double damping,
    double springs,
    double wall,
    double air,
    double kept) {

  /** What cannot be accounted for; zero but for the integrator's errors. */
  public double gap() {
    return kinetic - (load + hand + springs + wall + air + kept - friction - damping);
  }

  /** The gap as a share of the largest account. */
  public double imbalance() {
    double most = Math.max(Math.abs(kinetic), Math.abs(load));
    for (double account : new double[] {hand, friction, damping, springs, wall, air}) {
      most = Math.max(most, Math.abs(account));
    }
    return most == 0 ? 0 : Math.abs(gap()) / most;
  }
}
