package org.staywright.spring;

/**
 * A gas spring that pulls its ends together: gas on the rod's side of a solid piston, air behind
 * it, so that the ring around the rod draws it in: −(p − p_a)·A_a. Its gas has the most room where
 * the spring is shortest: V = V0 − A_a·y, y the extension from there.
 *
 * @param cylinder with the most room for gas where the spring is shortest
 * @param force F1: pulling force, rod going in, at y = 5 mm, 20 °C, above zero, N
 */
public record TractionSpring(Cylinder cylinder, double force) implements GasFilled {

  @Override
  public double drivingArea() {
    return -cylinder.ringArea();
  }

  @Override
  public int sense() {
    return -1;
  }

  /** Nothing buckles that is only pulled. */
  @Override
  public double criticalLoad(double length, double tubeEnd) {
    return Double.POSITIVE_INFINITY;
  }
}
