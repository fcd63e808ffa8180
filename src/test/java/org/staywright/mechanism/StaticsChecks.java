package org.staywright.mechanism;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.staywright.check.Check;
import org.staywright.check.Facts;

/** Flaps on hinges and loads on inclines against worked examples of statics. */
public final class StaticsChecks {

  private StaticsChecks() {}

  public static List<Check> all() {
    return List.of(hatch(10), hatch(35), hatch(70), ceilingHatch(), loftDoor());
  }

  /** The same hatch weighed: the printed force at its edge puts its centre in the middle. */
  public static List<Check> centres() {
    CSVRecord row = Facts.example("moments", "uniform hatch hinged at edge", "F");
    double gravity = 9.8;
    double asWeighed = Double.parseDouble(row.get("value")) * STANDARD_GRAVITY / gravity;
    Body earthAndMoon =
        Body.of(
            List.of(new Body(5.98e24, new Point(0, 0)), new Body(7.35e22, new Point(3.84e8, 0))));
    return List.of(
        Check.percent(
            "hatch of 12 kg weighed at its edge, centre of mass over its width",
            "0.5",
            Body.weighed(12, new Point(1, 0), asWeighed).centre().x(),
            "",
            0.1,
            Facts.source(row) + "; a uniform hatch, g = 9.8 m/s² in the book"),
        Check.printed(
            "earth (5.98e24 kg) and moon (7.35e22 kg, 3.84e8 m away) added up, in 10⁶ m",
            "4.66",
            earthAndMoon.centre().x() / 1e6,
            "10⁶ m",
            0.1,
            "textbook exercise with its answer, numerade.com, \"the masses of the Earth and Moon\""));
  }

  /** 12 kg held by a vertical force at the far edge: the same at every angle. */
  private static Check hatch(double degrees) {
    CSVRecord row = Facts.example("moments", "uniform hatch hinged at edge", "F");
    Travel travel = flap(12, 0.5, new Point(1, 0), degrees, 1).travel(Math.toRadians(degrees));
    int last = travel.last();
    double force = -travel.load()[last] / (travel.hand() * Math.cos(travel.q()[last]));
    String what = "hatch of 12 kg, vertical force at its edge, open " + (int) degrees + "°";
    return Check.printed(
        what, row.get("value"), force, "N", 0.1, Facts.source(row) + "; g = 9.8 m/s² in the book");
  }

  private static Check ceilingHatch() {
    CSVRecord row = Facts.example("moments", "ceiling hatch hinged at end", "F ; hinge");
    Travel travel = flap(180 / STANDARD_GRAVITY, 0.5, new Point(0.5, 0), 60, 1).travel(1);
    double force = -travel.load()[0] / travel.hand();
    String published = row.get("value").substring(0, row.get("value").indexOf(' '));
    return Check.printed(
        "hatch of 180 N, vertical force at its centre, closed",
        published,
        force,
        "N",
        0.01,
        Facts.source(row) + " (answer by statics)");
  }

  /** OA = OB = 1 m, the strut AB as the spring: its force from the lever dL/dθ. */
  private static Check loftDoor() {
    double angle = Math.toRadians(50);
    Travel travel = flap(100 / STANDARD_GRAVITY, 0.5, new Point(1, 0), 50, 1).travel(angle);
    int last = travel.last();
    return Check.printed(
        "loft door of 100 N at 50°, force in the strut",
        "35.5",
        -travel.load()[last] / travel.lever()[last],
        "N",
        0.01,
        "M2 textbook exercise with the book's answer, community.tes.com threads/m2-question.509663");
  }

  /** Loads on inclined planes; the books take g = 9.8 m/s². */
  public static List<Check> inclines() {
    String skier =
        "OpenStax, College Physics, ch. 4, example \"Weight on an Incline\" (statement seen at"
            + " jobilize.com, answers from memory)";
    double component = lift(60, 25).travel(0.1).load()[0];
    return List.of(
        Check.printed(
            "block of 10 kg at 30°, pull of its weight along the plane",
            "49",
            -lift(10, 30).travel(0.1).load()[0],
            "N",
            0.1,
            "SparkNotes, Physics, Dynamics, newtonapplications/problems_3, second problem"),
        Check.printed(
            "skier of 60.0 kg at 25°, no friction: acceleration",
            "4.14",
            -component / 60,
            "m/s²",
            0.1,
            skier),
        Check.printed(
            "the same with 45.0 N of friction",
            "3.39",
            (-component - 45) / 60,
            "m/s²",
            0.1,
            skier));
  }

  private static StraightLift lift(double mass, double degrees) {
    return new StraightLift(
        new Masses(mass, mass, mass),
        0.1,
        Math.toRadians(degrees),
        0,
        new Mounts(new Point(0, 0), new Point(0.3, 0), 0, Mounts.RodEnd.EITHER));
  }

  private static HingedFlap flap(
      double mass, double centre, Point handle, double degrees, double mount) {
    return new HingedFlap(
        new Masses(mass, mass, mass),
        new Point(centre, 0),
        handle,
        1,
        Math.toRadians(degrees),
        0,
        0,
        // The strut's foot lies where the closed door ends: they part as it opens.
        new Mounts(new Point(mount, 0), new Point(1, 0), 0, Mounts.RodEnd.EITHER));
  }
}
