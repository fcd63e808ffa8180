package org.staywright.document.view;

import static org.staywright.document.view.RigidView.millimetres;

import java.util.List;
import java.util.Optional;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Graphic;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Sketch;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Point;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** A flap as a slab from its hinge to its handle. */
record FlapSketch(HingedFlap flap, double end, Wording wording) implements LoadSketch {

  private static final Point HINGE = new Point(0, 0);

  @Override
  public Words words() {
    String mass = wording.measure(flap.masses().nominal(), Unit.KILOGRAM, 1);
    String angle = wording.shortest(Unit.DEGREE.of(end), 1) + "°";
    String sense = flap.sense() > 0 ? "counterclockwise" : "clockwise";
    return new Words(
        wording.text("document.side-view"),
        wording.text(
            "document.side-view.about." + sense,
            mass,
            angle,
            wording.quantity(flap.length(0), Unit.MILLIMETRE, 0),
            wording.quantity(flap.length(end), Unit.MILLIMETRE, 0)),
        wording.text("document.zones.about." + sense, mass, angle),
        angle,
        "document.moving-mount");
  }

  @Override
  public double across() {
    return 30;
  }

  @Override
  public Box room() {
    return Box.around(List.of(HINGE, tip(), centreOfMass(0))).with(sweep().bounds());
  }

  @Override
  public List<Point> outline(double em) {
    double half = 0.32 * em;
    double along = Math.atan2(tip().y(), tip().x());
    double far = tip().distance();
    return List.of(
        new Point(0, -half).turned(along),
        new Point(far, -half).turned(along),
        new Point(far, half).turned(along),
        new Point(0, half).turned(along));
  }

  /** The nearest point on the flap's middle line. */
  @Override
  public Optional<Point> foot(Point mount) {
    Point tip = tip();
    double length = tip.distance();
    double share = (mount.x() * tip.x() + mount.y() * tip.y()) / (length * length);
    double held = Math.max(0, Math.min(1, share));
    return Optional.of(new Point(held * tip.x(), held * tip.y()));
  }

  @Override
  public Optional<Point> handle() {
    return Optional.of(tip());
  }

  @Override
  public List<Point> pins() {
    return List.of(HINGE);
  }

  @Override
  public void travel(Sketch sketch) {
    Graphic.Arc sweep = sweep();
    sketch.add(sweep);
    // The head follows the chord, so that it sits on the arc and not beside it.
    double back = Math.min(0.5 * Math.abs(sweep.sweep()), 0.4 * sketch.em() / sweep.radius());
    double tangent = sweep.from() + sweep.sweep() - flap.sense() * back;
    sketch.arrowhead(Role.TRAVEL, sweep.at(1), tangent + flap.sense() * Math.PI / 2);
  }

  @Override
  public Point halfWay(double em) {
    return sweep().at(0.5);
  }

  @Override
  public Point centreOfMass(double em) {
    return millimetres(flap.centreOfMass());
  }

  @Override
  public double weight() {
    return 3;
  }

  @Override
  public Point timed(double em) {
    return tip();
  }

  private Point tip() {
    return millimetres(flap.handle());
  }

  private Graphic.Arc sweep() {
    return new Graphic.Arc(
        Role.TRAVEL, HINGE, tip().distance(), Math.atan2(tip().y(), tip().x()), flap.sense() * end);
  }
}
