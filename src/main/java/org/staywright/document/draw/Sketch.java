package org.staywright.document.draw;

import java.util.ArrayList;
import java.util.List;
import org.staywright.document.draw.Graphic.Anchor;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.mechanism.Point;

/** A drawing in the making. */
public final class Sketch {

  private static final double ARROW_LENGTH = 0.75;
  private static final double ARROW_HALF_WIDTH = 0.2;

  private final double em;
  private final List<Graphic> shapes = new ArrayList<>();

  public Sketch(double em) {
    this.em = em;
  }

  public double em() {
    return em;
  }

  public List<Graphic> shapes() {
    return shapes;
  }

  public void add(Graphic shape) {
    shapes.add(shape);
  }

  public void line(Role role, Point from, Point to) {
    path(role, List.of(from, to));
  }

  public void line(Role role, double x1, double y1, double x2, double y2) {
    line(role, new Point(x1, y1), new Point(x2, y2));
  }

  public void path(Role role, List<Point> points) {
    add(new Graphic.Path(role, points, false));
  }

  public void polygon(Role role, List<Point> points) {
    add(new Graphic.Path(role, points, true));
  }

  public void rectangle(Role role, double left, double bottom, double right, double top) {
    polygon(
        role,
        List.of(
            new Point(left, bottom),
            new Point(right, bottom),
            new Point(right, top),
            new Point(left, top)));
  }

  public void circle(Role role, Point centre, double radius) {
    add(new Graphic.Circle(role, centre, radius));
  }

  public void text(Role role, Point at, Anchor anchor, Size size, String text) {
    add(label(role, at, anchor, size, text));
  }

  void turnedText(Role role, Point at, Anchor anchor, Size size, String text) {
    add(new Graphic.Text(role, at, anchor, size, em * size.factor(), true, text));
  }

  public Graphic.Text label(Role role, Point at, Anchor anchor, Size size, String text) {
    return new Graphic.Text(role, at, anchor, size, em * size.factor(), false, text);
  }

  /** A filled head with its tip at a point, looking along a direction, rad. */
  public void arrowhead(Role role, Point tip, double direction) {
    Point back = new Point(-ARROW_LENGTH * em, 0);
    polygon(
        role,
        List.of(
            tip,
            plus(tip, new Point(back.x(), ARROW_HALF_WIDTH * em).turned(direction)),
            plus(tip, new Point(back.x(), -ARROW_HALF_WIDTH * em).turned(direction))));
  }

  public static Point plus(Point a, Point b) {
    return new Point(a.x() + b.x(), a.y() + b.y());
  }

  /** All that is drawn meanwhile moves as one. */
  public void moving(Track track, Runnable drawing) {
    int from = shapes.size();
    drawing.run();
    List<Graphic> drawn = shapes.subList(from, shapes.size());
    Graphic moved = new Graphic.Moved(track, drawn);
    drawn.clear();
    shapes.add(moved);
  }

  /** All that was drawn, with a margin around it. */
  public Drawing drawing(String title, String description, double margin) {
    Box box = shapes.get(0).bounds();
    for (Graphic shape : shapes) {
      box = box.with(shape.bounds());
    }
    return new Drawing(title, description, box.grown(margin), em, shapes, null);
  }
}
