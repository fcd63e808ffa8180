package org.staywright.document.draw;

import java.util.ArrayList;
import java.util.List;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.mechanism.Point;

/** Puts labels beside points, each where it covers the least of what is drawn already. */
public final class Labels {

  private static final double[] DISTANCES = {0.5, 1.2, 2.2, 3.4};

  /** What a point of a line under a label costs against 2.5 for each step farther away. */
  private static final double INK = 3;

  /** To the right first: where a reader looks. */
  private static final int[][] DIRECTIONS = {
    {1, 0}, {1, 1}, {1, -1}, {-1, 0}, {-1, 1}, {0, 1}, {-1, -1}, {0, -1}
  };

  private final Sketch sketch;
  private final List<Point> ink = new ArrayList<>();
  private final List<Box> taken = new ArrayList<>();

  public Labels(Sketch sketch) {
    this.sketch = sketch;
    for (Graphic shape : sketch.shapes()) {
      sample(shape);
    }
  }

  /** A label near a point, clear of a mark of some radius around it. */
  public void place(Role role, Point at, double clear, Size size, String text) {
    Graphic.Text best = null;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < DISTANCES.length; i++) {
      for (int j = 0; j < DIRECTIONS.length; j++) {
        Graphic.Text tried = tried(role, at, clear, size, text, DIRECTIONS[j], DISTANCES[i]);
        double cost = cost(tried.bounds()) + 2.5 * i + 0.1 * j;
        if (cost < least) {
          least = cost;
          best = tried;
        }
      }
    }
    taken.add(best.bounds());
    sketch.add(best);
  }

  /** The first of several labels that cover the least. */
  public void place(List<Graphic.Text> several) {
    Graphic.Text best = several.get(0);
    for (Graphic.Text each : several) {
      best = cost(each.bounds()) < cost(best.bounds()) ? each : best;
    }
    taken.add(best.bounds());
    sketch.add(best);
  }

  private Graphic.Text tried(
      Role role, Point at, double clear, Size size, String text, int[] direction, double far) {
    double em = sketch.em();
    int right = direction[0];
    double slant = right != 0 && direction[1] != 0 ? 0.7 : 1;
    Point place =
        new Point(
            at.x() + right * slant * (clear + far * em),
            at.y() + direction[1] * (slant * (clear + far * em) + 0.5 * em));
    Anchor anchor = right > 0 ? Anchor.START : right < 0 ? Anchor.END : Anchor.MIDDLE;
    return sketch.label(role, place, anchor, size, text);
  }

  private double cost(Box box) {
    double cost = 0;
    for (Box other : taken) {
      cost += box.meets(other) ? 100 : 0;
    }
    for (Point point : ink) {
      cost += box.contains(point) ? INK : 0;
    }
    return cost;
  }

  private void sample(Graphic shape) {
    if (shape instanceof Graphic.Path path) {
      List<Point> points = path.points();
      int sides = path.closed() ? points.size() : points.size() - 1;
      for (int i = 0; i < sides; i++) {
        between(points.get(i), points.get((i + 1) % points.size()));
      }
    } else if (shape instanceof Graphic.Arc arc) {
      Point from = arc.at(0);
      for (int i = 1; i <= 36; i++) {
        between(from, arc.at(i / 36.0));
        from = arc.at(i / 36.0);
      }
    } else if (shape instanceof Graphic.Circle circle) {
      sample(new Graphic.Arc(circle.role(), circle.centre(), circle.radius(), 0, 2 * Math.PI));
    } else {
      taken.add(shape.bounds());
    }
  }

  private void between(Point from, Point to) {
    int steps = 1 + (int) (to.minus(from).distance() / (0.4 * sketch.em()));
    for (int i = 0; i < steps; i++) {
      double share = (double) i / steps;
      ink.add(
          new Point(
              from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y())));
    }
  }
}
