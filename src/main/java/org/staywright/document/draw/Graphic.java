package org.staywright.document.draw;

import java.util.List;
import org.staywright.mechanism.Point;

/** One thing in a drawing, in the drawing's own units, y up. */
public sealed interface Graphic {

  Role role();

  /** The least box around it. */
  Box bounds();

  void drawWith(Pen pen);

  /** A line through points, or the polygon they enclose. */
  public record Path(Role role, List<Point> points, boolean closed) implements Graphic {

    public Path {
      points = List.copyOf(points);
    }

    @Override
    public Box bounds() {
      return Box.around(points);
    }

    @Override
    public void drawWith(Pen pen) {
      pen.draw(this);
    }
  }

  /** A whole circle. */
  record Circle(Role role, Point centre, double radius) implements Graphic {

    @Override
    public Box bounds() {
      return Box.around(List.of(centre)).grown(radius);
    }

    @Override
    public void drawWith(Pen pen) {
      pen.draw(this);
    }
  }

  /**
   * A part of a circle.
   *
   * @param from angle of its start, rad
   * @param sweep angle it runs over, counterclockwise positive, rad
   */
  record Arc(Role role, Point centre, double radius, double from, double sweep) implements Graphic {

    private static final int STEPS = 90;

    /** The point at a share of the way, 0 to 1. */
    public Point at(double share) {
      double angle = from + share * sweep;
      return new Point(
          centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
    }

    @Override
    public Box bounds() {
      List<Point> samples = new java.util.ArrayList<>();
      for (int i = 0; i <= STEPS; i++) {
        samples.add(at((double) i / STEPS));
      }
      return Box.around(samples);
    }

    @Override
    public void drawWith(Pen pen) {
      pen.draw(this);
    }
  }

  /** Several that move as one; they are drawn where they stand before they are turned. */
  record Moved(Track track, List<Graphic> shapes) implements Graphic {

    public Moved {
      shapes = List.copyOf(shapes);
    }

    @Override
    public Role role() {
      return shapes.get(0).role();
    }

    @Override
    public Box bounds() {
      List<Point> corners = new java.util.ArrayList<>();
      for (Graphic shape : shapes) {
        Box box = shape.bounds();
        for (double x : new double[] {box.left(), box.right()}) {
          for (double y : new double[] {box.bottom(), box.top()}) {
            for (int i = 0; i < track.size(); i++) {
              corners.add(track.at(i, new Point(x, y)));
            }
          }
        }
      }
      return Box.around(corners);
    }

    @Override
    public void drawWith(Pen pen) {
      pen.draw(this);
    }
  }

  /**
   * A short text.
   *
   * @param at the place of its anchor, halfway up a capital letter
   * @param em its type size, in the drawing's units
   * @param turned reading upwards
   */
  record Text(Role role, Point at, Anchor anchor, Size size, double em, boolean turned, String text)
      implements Graphic {

    /** Mean width of a character over the type size: an estimate on the wide side. */
    private static final double CHARACTER = 0.6;

    @Override
    public Box bounds() {
      double width = CHARACTER * em * text.length();
      double back = width * anchor.share();
      double half = 0.6 * em;
      return turned
          ? new Box(at.x() - half, at.y() - back, at.x() + half, at.y() + width - back)
          : new Box(at.x() - back, at.y() - half, at.x() + width - back, at.y() + half);
    }

    @Override
    public void drawWith(Pen pen) {
      pen.draw(this);
    }
  }

  /** Which end of a text stands at its place. */
  enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
      this.share = share;
    }

    /** How much of the text lies before its place. */
    public double share() {
      return share;
    }
  }

  /** Type sizes. */
  enum Size {
    SMALL(0.85),
    NORMAL(1),
    LARGE(1.25);

    private final double factor;

    Size(double factor) {
      this.factor = factor;
    }

    double factor() {
      return factor;
    }
  }
}
