package org.staywright.document.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Svg;
import org.staywright.document.draw.Track;
import org.staywright.mechanism.Point;

class MovingViewTest {

  @Test
  void bothEndsOfASpringStayOnItsMountsWhileTheyMove() {
    long seed = 5;
    System.out.println("seed " + seed);
    Random random = new Random(seed);
    for (int n = 0; n < 100; n++) {
      Point frame = new Point(random.nextGaussian(), random.nextGaussian());
      Point start = new Point(5 + random.nextDouble(), random.nextGaussian());
      List<Point> moves = new ArrayList<>();
      for (int i = 0; i <= 40; i++) {
        moves.add(start.turned(i * 0.15));
      }
      Track still = Track.turning(frame, start, moves);
      Track moved = Track.following(frame, start, moves);
      for (int i = 0; i <= 40; i++) {
        assertEquals(0, still.at(i, frame).minus(frame).distance(), 1e-9);
        assertEquals(0, moved.at(i, start).minus(moves.get(i)).distance(), 1e-9);
        // Both pieces lie on the line between the mounts.
        Point along = still.at(i, start).minus(frame);
        Point way = moves.get(i).minus(frame);
        assertEquals(0, along.x() * way.y() - along.y() * way.x(), 1e-9);
        assertTrue(i == 0 || Math.abs(still.turn()[i] - still.turn()[i - 1]) < Math.PI / 2);
      }
    }
  }

  @Test
  void aMovingGroupStandsAtItsStartWithoutScript() {
    Sketch sketch = new Sketch(12);
    Track track =
        new Track(
            new Point(0, 0),
            new double[] {Math.PI / 2, 0},
            List.of(new Point(0, 0), new Point(10, 0)));
    sketch.moving(track, () -> sketch.line(Role.FLAP, 0, 0, 20, 0));
    String svg = Svg.of(sketch.drawing("title", "description", 0));
    // From 20 up to 30 to the right: the box holds all of it.
    assertTrue(svg.contains("viewBox=\"0 0 30 20\""), svg);
    assertTrue(svg.contains("data-pivot=\"0 20\" data-track=\"-90 0 0;0 10 0\""), svg);
    assertTrue(svg.contains("transform=\"translate(0 0) rotate(-90 0 20)\""), svg);
  }
}
