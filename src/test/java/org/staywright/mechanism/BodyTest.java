package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BodyTest {

  private static final long SEED = Long.getLong("staywright.seed", 20_261_125);

  @Test
  void aPanelInPiecesIsThePanel() {
    Body whole = Body.panel(12, new Point(0.1, 0), new Point(0.9, 0.4));
    List<Body> pieces =
        IntStream.range(0, 8)
            .mapToObj(
                i ->
                    Body.panel(
                        1.5,
                        new Point(0.1 + 0.1 * i, 0.05 * i),
                        new Point(0.2 + 0.1 * i, 0.05 + 0.05 * i)))
            .toList();
    near(whole, Body.of(pieces));
  }

  @Test
  void aPanelBalancesInItsMiddle() {
    near(new Body(12, new Point(0.5, 0.2)), Body.panel(12, new Point(0.1, 0), new Point(0.9, 0.4)));
  }

  /** A flap of known centre, hung on a hinge without a spring: the force that balances it. */
  @Test
  void twoWeighingsFindTheCentreWhereverItIs() {
    System.out.println("BodyTest seed " + SEED);
    Random random = new Random(SEED);
    for (int i = 0; i < 1000; i++) {
      Body body =
          new Body(
              1 + 40 * random.nextDouble(), new Point(random.nextDouble(), random.nextDouble()));
      Point handle = new Point(0.3 + random.nextDouble(), random.nextDouble() - 0.5);
      double first = Math.PI * random.nextDouble();
      double second = first + Math.toRadians(15 + 150 * random.nextDouble());
      Body found =
          Body.weighed(
              body.mass(), handle, scale(body, handle, first), scale(body, handle, second));
      near(body, found);
    }
  }

  @Test
  void oneWeighingFindsACentreOnTheLineToTheHandleAtAnyAngle() {
    Point handle = new Point(0.8, 0.1);
    Body body = new Body(18, new Point(0.4, 0.05));
    Stream.of(-0.3, 0.0, 0.7)
        .forEach(angle -> near(body, Body.weighed(18, handle, scale(body, handle, angle).force())));
  }

  /** Moments about the hinge: the scale pulls up, gravity down. */
  private static Body.Weighing scale(Body body, Point handle, double angle) {
    double weight = body.mass() * STANDARD_GRAVITY;
    double across = body.centre().x() * Math.cos(angle) - body.centre().y() * Math.sin(angle);
    double arm = handle.x() * Math.cos(angle) - handle.y() * Math.sin(angle);
    return new Body.Weighing(angle, weight * across / arm);
  }

  private static void near(Body expected, Body found) {
    assertEquals(expected.mass(), found.mass(), 1e-9);
    assertEquals(expected.centre().x(), found.centre().x(), 1e-9);
    assertEquals(expected.centre().y(), found.centre().y(), 1e-9);
  }
}
