package org.staywright.document.view;

import java.util.List;
import java.util.Optional;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.Point;

/**
 * What a load looks like that is moved as a whole, and what it moves on: all that its poses do not
 * tell a {@link RigidView}. Points are mm at the start of the travel; lengths that are nobody's
 * measure count in type sizes, em.
 */
interface LoadSketch {

  /**
   * @param title of the view
   * @param about what is to be seen in it, for who does not see it
   * @param zones the same where its mounts are looked for
   * @param travel how far it moves
   * @param mount key of what the mount on it is called
   */
  record Words(String title, String about, String zones, String travel, String mount) {}

  Words words();

  /** Type sizes along the longer side. */
  double across();

  /** What of it is to be seen besides its mounts. */
  Box room();

  /** Its outline. */
  List<Point> outline(double em);

  /** Where a mount beside its outline is held by it; empty where every mount lies on it. */
  default Optional<Point> foot(Point mount) {
    return Optional.empty();
  }

  /** Where it is taken hold of; empty where anywhere will do. */
  default Optional<Point> handle() {
    return Optional.empty();
  }

  /** What it turns on, at rest and joined to the frame mount. */
  default List<Point> pins() {
    return List.of();
  }

  /** Draws what it slides on, joined to the frame mount. */
  default void rail(Sketch sketch) {}

  default void labelRail(Labels labels, double em) {}

  /** Draws the way that it goes. */
  void travel(Sketch sketch);

  /** In the middle of that. */
  Point halfWay(double em);

  Point centreOfMass(double em);

  /** How long the arrow of its weight is, in type sizes. */
  double weight();

  /** A point of it at which times are told. */
  Point timed(double em);
}
