package org.staywright.mechanism;

import java.util.Random;
import java.util.stream.IntStream;

/** The same flap by another route: turned as a whole, heights and distances read off. */
record Flap(
    int draw,
    double mass,
    Point centre,
    int sense,
    double end,
    double tilt,
    Point frame,
    Point moving) {

  static Flap random(int draw, Random random) {
    while (true) {
      Flap flap =
          new Flap(
              draw,
              1 + 50 * random.nextDouble(),
              anywhere(random),
              draw % 2 == 0 ? 1 : -1,
              0.3 + 1.7 * random.nextDouble(),
              Math.PI * (random.nextDouble() - 0.5),
              anywhere(random),
              anywhere(random));
      // Nearly touching mounts have lengths that no difference quotient follows.
      boolean apart =
          IntStream.rangeClosed(0, 60).allMatch(i -> flap.length(flap.end * i / 60) > 0.1);
      if (apart) {
        return flap;
      }
    }
  }

  private static Point anywhere(Random random) {
    return new Point(random.nextDouble() * 1.6 - 0.8, random.nextDouble() * 1.6 - 0.8);
  }

  HingedFlap made() {
    return new HingedFlap(
        new Masses(mass, 1.1 * mass, 0.8 * mass),
        centre,
        new Point(0.8, 0),
        sense,
        end,
        tilt,
        0,
        new Mounts(frame, moving, 0, Mounts.RodEnd.EITHER));
  }

  Flap mirrored() {
    return new Flap(
        draw,
        mass,
        new Point(-centre.x(), centre.y()),
        -sense,
        end,
        -tilt,
        new Point(-frame.x(), frame.y()),
        new Point(-moving.x(), moving.y()));
  }

  double energy(double q) {
    return mass * 9.80665 * height(centre, q);
  }

  /** Height over the hinge in the world: polar angle plus opening plus tilt. */
  double height(Point point, double q) {
    double angle = Math.atan2(point.y(), point.x()) + sense * q + tilt;
    return Math.hypot(point.x(), point.y()) * Math.sin(angle);
  }

  /** By the law of cosines in the triangle hinge, frame mount, moving mount. */
  double length(double q) {
    double a = Math.hypot(frame.x(), frame.y());
    double b = Math.hypot(moving.x(), moving.y());
    double between =
        Math.atan2(moving.y(), moving.x()) + sense * q - Math.atan2(frame.y(), frame.x());
    return Math.sqrt(a * a + b * b - 2 * a * b * Math.cos(between));
  }

  String place() {
    return "seed " + HingedFlapTest.SEED + ", " + this;
  }
}
