package org.staywright.fit.replace;

import java.util.List;
import java.util.Random;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.unit.Unit;

/**
 * A flap that some springs of the range carry, and what somebody measures of it. The mechanism is
 * the one that jobs are judged by, not the closed forms of the finder.
 *
 * @param flap closed at a slope of the tilt
 * @param part that hangs there
 * @param springs of it
 * @param spare stroke left at the open end, m
 * @param slope closed, rad
 */
record Flap(HingedFlap flap, Part part, int springs, double spare, double slope) {

  private static final double G = Unit.STANDARD_GRAVITY;

  /** Draws until a part of the range hangs well on the flap. */
  static Flap of(List<Part> parts, Random random) {
    while (true) {
      Flap one = tried(parts, random);
      if (one != null) {
        return one;
      }
    }
  }

  private static Flap tried(List<Part> parts, Random random) {
    double slope = Math.toRadians(-30 + 50 * random.nextDouble());
    double opening = Math.toRadians(45 + 50 * random.nextDouble());
    double far = 0.15 + 0.3 * random.nextDouble();
    double near = 0.05 + 0.15 * random.nextDouble();
    double start = Math.toRadians(20 + 40 * random.nextDouble());
    double arm = 0.5 + 0.6 * random.nextDouble();
    Point moving = new Point(far, 0);
    Point frame = new Point(near, 0).turned(-start);
    Point centre =
        new Point(arm * (0.4 + 0.2 * random.nextDouble()), -0.05 + 0.1 * random.nextDouble());
    double spare = 2e-3 + 23e-3 * random.nextDouble();
    double margin = 1.1 + 0.5 * random.nextDouble();
    int springs = 1 + random.nextInt(2);
    HingedFlap light = flap(1, centre, arm, opening, slope, frame, moving);
    double travel = light.length(opening) - light.length(0);
    List<Part> hanging =
        parts.stream()
            .filter(part -> part.spring().stroke() > travel + spare + 2e-3)
            .filter(part -> part.spring().stroke() < travel + spare + 25e-3)
            .toList();
    double closing = weight(light, opening);
    if (hanging.isEmpty() || closing < 0.02 * G || light.lever(opening) < 0.03) {
      return null;
    }
    Part part = hanging.get(random.nextInt(hanging.size()));
    double push = part.spring().law().extending(spare, Unit.ROOM);
    double mass = springs * push * light.lever(opening) / (margin * closing);
    return new Flap(
        flap(mass, centre, arm, opening, slope, frame, moving), part, springs, spare, slope);
  }

  static HingedFlap flap(
      double mass,
      Point centre,
      double arm,
      double opening,
      double tilt,
      Point frame,
      Point moving) {
    Mounts mounts = new Mounts(frame, moving, 0, Mounts.RodEnd.EITHER);
    return new HingedFlap(
        new Masses(mass, mass, mass), centre, new Point(arm, 0), 1, opening, tilt, 0, mounts);
  }

  /** Closing moment of the weight, N·m. */
  private static double weight(HingedFlap flap, double q) {
    Point centre = flap.centreOfMass().turned(q + flap.tilt());
    return flap.masses().nominal() * G * centre.x();
  }

  double weight(double q) {
    return weight(flap, q);
  }

  /** The angle from which it rises by itself to the end, rad; NaN for none within the travel. */
  double rises() {
    ForceLaw law = part.spring().law();
    double from = Double.NaN;
    double open = flap.length(flap.end());
    for (int i = 1000; i >= 0; i--) {
      double q = flap.end() * i / 1000;
      double push = law.extending(open + spare - flap.length(q), Unit.ROOM);
      if (springs * push * flap.lever(q) < weight(q)) {
        return from;
      }
      from = q;
    }
    return Double.NaN;
  }

  /**
   * What is measured, every reading off by a normal error of its half-width times a factor.
   *
   * @param scale half-width of the scale, share
   * @param remembered whether somebody knows from where it rose
   */
  FlapSurvey measured(Random random, double factor, double scale, boolean remembered) {
    double level = factor * Math.toRadians(1.5);
    double tape = factor * 3e-3;
    double low = flap.end() * (0.05 + 0.2 * random.nextDouble());
    double high = flap.end() * (0.6 + 0.3 * random.nextDouble());
    return new FlapSurvey(
            springs,
            new Reading(flap.handle().distance(), factor * 5e-3),
            new Reading(slope, level),
            new Reading(slope + flap.end(), level),
            scale(low, scale, level),
            scale(high, scale, level),
            new Reading(flap.mounts().frame().distance(), tape),
            new Reading(flap.mounts().moving().distance(), tape),
            new Reading(flap.length(flap.end()), tape),
            null,
            remembered ? new Reading(slope + rises(), factor * Math.toRadians(8)) : null)
        .drawn(random);
  }

  private FlapReading scale(double q, double share, double level) {
    double force = weight(q) / flap.handle().distance();
    return new FlapReading(
        new Reading(force, Math.hypot(share * Math.abs(force), 1e-6)),
        new Reading(slope + q, level));
  }
}
