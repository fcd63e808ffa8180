package org.staywright.mechanism;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.List;

/**
 * A mass and where its centre lies, closed: a panel, several bodies added up, or what was weighed.
 *
 * <p>Moments about the hinge (any text on engineering mechanics, e.g. J. L. Meriam and L. G.
 * Kraige, Statics, ch. 3 and 5).
 *
 * @param mass kg
 * @param centre of mass, m
 */
public record Body(double mass, Point centre) {

  /**
   * A scale that hangs plumb and lifts the handle.
   *
   * @param turned from the closed position to where it was weighed, counterclockwise from plumb
   *     coordinates, rad: opening and tilt together
   * @param force it shows, N
   */
  public record Weighing(double turned, double force) {}

  /** A panel of the same make all over, between its edges. */
  public static Body panel(double mass, Point near, Point far) {
    return new Body(mass, new Point((near.x() + far.x()) / 2, (near.y() + far.y()) / 2));
  }

  /** Several as one. */
  public static Body of(List<Body> parts) {
    double mass = 0;
    double x = 0;
    double y = 0;
    for (Body part : parts) {
      mass += part.mass;
      x += part.mass * part.centre.x();
      y += part.mass * part.centre.y();
    }
    return new Body(mass, new Point(x / mass, y / mass));
  }

  /**
   * By one weighing at the handle. Force and weight act on the same levers where the centre of mass
   * lies on the line from hinge to handle, which is taken here; then the angle does not matter.
   */
  public static Body weighed(double mass, Point handle, double force) {
    double share = force / (mass * STANDARD_GRAVITY);
    return new Body(mass, new Point(share * handle.x(), share * handle.y()));
  }

  /**
   * By two weighings at the handle in different positions: F·X = m·g·x in each, X and x how far
   * handle and centre of mass lie from the hinge across the plumb line.
   */
  public static Body weighed(double mass, Point handle, Weighing one, Weighing other) {
    double first = moment(handle, one) / (mass * STANDARD_GRAVITY);
    double second = moment(handle, other) / (mass * STANDARD_GRAVITY);
    // x·cos α − y·sin α is known for both angles α.
    double between = Math.sin(other.turned - one.turned);
    return new Body(
        mass,
        new Point(
            (first * Math.sin(other.turned) - second * Math.sin(one.turned)) / between,
            (first * Math.cos(other.turned) - second * Math.cos(one.turned)) / between));
  }

  private static double moment(Point handle, Weighing weighing) {
    return weighing.force * handle.turned(weighing.turned).x();
  }
}
