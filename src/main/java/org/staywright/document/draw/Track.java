package org.staywright.document.draw;

import java.util.List;
import org.staywright.mechanism.Point;

/**
 * Where something stands in the course of a motion, at even times: turned about its pivot as drawn,
 * then shifted.
 *
 * @param pivot in the drawing's units
 * @param turn counterclockwise, rad
 * @param shift in the drawing's units
 */
public record Track(Point pivot, double[] turn, List<Point> shift) {

  /** One that keeps pointing from its end at rest to another that moves. */
  public static Track turning(Point pivot, Point drawn, List<Point> moves) {
    return new Track(
        pivot, turns(pivot, drawn, moves), moves.stream().map(at -> new Point(0, 0)).toList());
  }

  /** One that moves with its end and keeps pointing to another at rest. */
  public static Track following(Point rest, Point drawn, List<Point> moves) {
    return new Track(
        drawn, turns(rest, drawn, moves), moves.stream().map(at -> at.minus(drawn)).toList());
  }

  private static double[] turns(Point pivot, Point drawn, List<Point> moves) {
    double from = angle(drawn.minus(pivot));
    double[] turns = new double[moves.size()];
    double last = 0;
    for (int i = 0; i < turns.length; i++) {
      double turn = angle(moves.get(i).minus(pivot)) - from;
      // The shorter way round from where it was, so that nothing spins between two times.
      last += Math.IEEEremainder(turn - last, 2 * Math.PI);
      turns[i] = last;
    }
    return turns;
  }

  private static double angle(Point way) {
    return Math.atan2(way.y(), way.x());
  }

  int size() {
    return turn.length;
  }

  /** Where a point of what is drawn stands at one of the times. */
  public Point at(int i, Point point) {
    return Sketch.plus(Sketch.plus(pivot, point.minus(pivot).turned(turn[i])), shift.get(i));
  }
}
