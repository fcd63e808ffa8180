package org.staywright.document.view;

import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.Arrays;
import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic.Size;
import org.staywright.document.draw.Labels;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.document.draw.Track;
import org.staywright.fit.assess.Fit;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.SeatColumn;
import org.staywright.motion.Motion;
import org.staywright.wording.Wording;

/**
 * A seat on its column from the side, mm, the foot of the column at the origin: at its highest in
 * full lines, at its lowest as a ghost, with what is left of the column's stroke below.
 */
final class SeatView {

  /** Type sizes along the height. */
  private static final double ACROSS = 27;

  /** Of a seat and its foot, whose measures the job does not give. */
  private static final double HALF_SEAT = 190;

  private static final double SEAT = 40;
  private static final double FOOT = 70;
  private static final double LOAD = 130;

  /** Rod that still shows when the column is pushed in. */
  private static final double ROD_LEFT = 10;

  /** Without an assessed column: its stroke and what it is longer than twice that. */
  private static final double BODY = 110;

  private final SeatColumn seat;
  private final Fit fit;
  private final Wording wording;
  private final double travel;
  private final double stroke;
  private final double extended;
  private final double halfTube;
  private final double halfRod;
  private final Sketch sketch;
  private final double em;

  private SeatView(SeatColumn seat, Fit fit, double letters, Wording wording) {
    this.seat = seat;
    this.fit = fit;
    this.wording = wording;
    this.travel = MILLIMETRE.of(seat.end());
    this.stroke = fit == null ? travel : MILLIMETRE.of(fit.part().spring().stroke());
    this.extended =
        fit == null ? 2 * travel + BODY : MILLIMETRE.of(fit.part().spring().extendedLength());
    this.halfTube = fit == null ? 14 : MILLIMETRE.of(fit.part().spring().tubeDiameter()) / 2;
    this.halfRod = fit == null ? 5 : MILLIMETRE.of(fit.part().spring().rodDiameter()) / 2;
    this.em = letters * (FOOT + extended + SEAT + LOAD) / ACROSS;
    this.sketch = new Sketch(em);
  }

  /** The seat on an assessed column; on a column as such where it is null. */
  static Drawing of(SeatColumn seat, Fit fit, double letters, Wording wording) {
    return new SeatView(seat, fit, letters, wording).draw();
  }

  /** The seat as it moves: at its lowest in full lines that carry their tracks. */
  static Drawing of(SeatColumn seat, Fit fit, Motion motion, Wording wording) {
    return new SeatView(seat, fit, 1, wording).draw(motion);
  }

  private Drawing draw(Motion motion) {
    double start = height(motion.q()[0]);
    List<Point> shifts =
        Arrays.stream(motion.q()).mapToObj(q -> new Point(0, height(q) - start)).toList();
    foot();
    for (int i : Stills.of(motion)) {
      pan(Role.GHOST, start + shifts.get(i).y());
    }
    sketch.rectangle(Role.ROD, -halfRod, 0, halfRod, stroke + ROD_LEFT);
    Track track = new Track(new Point(0, start), new double[shifts.size()], shifts);
    sketch.moving(
        track,
        () -> {
          tube(start);
          pan(Role.FLAP, start);
        });
    Labels labels = new Labels(sketch);
    for (int i : Stills.of(motion)) {
      Point beside = new Point(HALF_SEAT, start + shifts.get(i).y() + 0.8 * SEAT);
      labels.place(Role.LABEL, beside, 0.6 * em, Size.SMALL, Stills.time(motion, i, wording));
    }
    return Stills.drawing(sketch, motion, wording);
  }

  private Drawing draw() {
    foot();
    pan(Role.GHOST, lowest());
    sketch.rectangle(Role.ROD, -halfRod, 0, halfRod, stroke + ROD_LEFT);
    tube(extended);
    pan(Role.FLAP, extended);
    height();
    ends();
    load();
    labels();
    return sketch.drawing(
        wording.text("seat.view"),
        wording.text(
            "seat.view.about",
            kilograms(seat.seatMass()),
            kilograms(seat.lightest()),
            kilograms(seat.heaviest()),
            millimetres(travel),
            newtons(seat.heavy())),
        em);
  }

  /** Of five legs the two that are seen from the side, on castors. */
  private void foot() {
    sketch.rectangle(Role.METAL, -24, -0.62 * FOOT, 24, 0);
    for (int side : new int[] {-1, 1}) {
      sketch.polygon(
          Role.METAL,
          List.of(
              new Point(side * 24, -0.1 * FOOT),
              new Point(side * 1.1 * HALF_SEAT, -0.45 * FOOT),
              new Point(side * 1.1 * HALF_SEAT, -0.62 * FOOT),
              new Point(side * 24, -0.5 * FOOT)));
      sketch.circle(Role.OUTLINE, new Point(side * 1.05 * HALF_SEAT, -0.8 * FOOT), 0.2 * FOOT);
    }
    sketch.line(Role.AXIS, -1.3 * HALF_SEAT, -FOOT, 1.3 * HALF_SEAT, -FOOT);
  }

  private void tube(double top) {
    double length = extended - stroke - ROD_LEFT;
    sketch.rectangle(Role.TUBE, -halfTube, top - length, halfTube, top);
  }

  private void pan(Role role, double bottom) {
    double top = bottom + SEAT;
    sketch.polygon(
        role,
        List.of(
            new Point(-0.55 * HALF_SEAT, bottom),
            new Point(0.55 * HALF_SEAT, bottom),
            new Point(HALF_SEAT, bottom + 0.45 * SEAT),
            new Point(HALF_SEAT, top),
            new Point(-HALF_SEAT, top),
            new Point(-HALF_SEAT, bottom + 0.45 * SEAT)));
  }

  /** From the lowest to the highest top of the seat, to its right. */
  private void height() {
    double x = HALF_SEAT + 1.5 * em;
    Point tip = new Point(x, extended + SEAT);
    sketch.line(Role.DIMENSION, HALF_SEAT, lowest() + SEAT, x + 0.6 * em, lowest() + SEAT);
    sketch.line(Role.DIMENSION, HALF_SEAT, extended + SEAT, x + 0.6 * em, extended + SEAT);
    sketch.line(Role.TRAVEL, new Point(x, lowest() + SEAT), tip);
    sketch.arrowhead(Role.TRAVEL, tip, Math.PI / 2);
    sketch.arrowhead(Role.TRAVEL, new Point(x, lowest() + SEAT), -Math.PI / 2);
  }

  /** Where the column itself ends, to the left: fully out at the highest, pushed in below. */
  private void ends() {
    double x = left();
    sketch.line(Role.DIMENSION, -halfTube, extended, x - 0.6 * em, extended);
    sketch.line(Role.DIMENSION, -halfTube, pushedIn(), x - 0.6 * em, pushedIn());
    sketch.line(Role.DIMENSION, x, pushedIn(), x, extended);
    sketch.arrowhead(Role.DIMENSION, new Point(x, extended), Math.PI / 2);
    sketch.arrowhead(Role.DIMENSION, new Point(x, pushedIn()), -Math.PI / 2);
  }

  private void load() {
    Point tip = new Point(0, extended + SEAT);
    sketch.line(Role.GRAVITY, new Point(0, tip.y() + LOAD), tip);
    sketch.arrowhead(Role.GRAVITY, tip, -Math.PI / 2);
  }

  private void labels() {
    Labels labels = new Labels(sketch);
    Point load = new Point(0, extended + SEAT + 0.7 * LOAD);
    String heavy =
        wording.text("seat.view.load", kilograms(seat.heaviest()), newtons(seat.heavy()));
    labels.place(Role.GRAVITY, load, 0, Size.NORMAL, heavy);
    Point way = new Point(HALF_SEAT + 1.5 * em, lowest() + SEAT + travel / 2);
    labels.place(Role.TRAVEL, way, 0, Size.NORMAL, millimetres(travel));
    String empty = wording.text("seat.view.empty", kilograms(seat.seatMass()));
    Point pan = new Point(HALF_SEAT, extended + 0.8 * SEAT);
    labels.place(Role.LABEL, pan, 2.4 * em, Size.SMALL, empty);
    if (fit != null) {
      Point column = new Point(left(), (pushedIn() + extended) / 2);
      labels.place(
          Role.LABEL, column, 0, Size.SMALL, wording.text("seat.view.stroke", millimetres(stroke)));
      labels.place(
          Role.LABEL,
          new Point(left(), pushedIn()),
          0.3 * em,
          Size.SMALL,
          wording.text("seat.view.reserve", millimetres(stroke - travel)));
    }
  }

  private double left() {
    return -HALF_SEAT - 1.5 * em;
  }

  private double lowest() {
    return height(0);
  }

  /** Of the top of the column where the seat is raised by q, m. */
  private double height(double q) {
    return extended - travel + MILLIMETRE.of(q);
  }

  /** Where the top of the column is when nothing is left of its stroke. */
  private double pushedIn() {
    return extended - stroke;
  }

  private String kilograms(double mass) {
    return wording.measure(mass, KILOGRAM, 1);
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  private String millimetres(double length) {
    return wording.quantity(MILLIMETRE.si(length), MILLIMETRE, 0);
  }
}
