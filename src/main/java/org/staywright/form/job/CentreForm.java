package org.staywright.form.job;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Body;
import org.staywright.mechanism.Point;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** Where a flap's centre of mass lies: from a panel, from parts, or from a scale at the handle. */
public final class CentreForm {

  /** Two weighings nearer to each other than this tell hardly more than one, degrees. */
  private static final double APART = 15;

  private static final String COUNTERCLOCKWISE = "counterclockwise";
  private static final Amount COORDINATE = Amount.between(-10_000, 10_000, MILLIMETRE);
  private static final Amount ANGLE = Amount.between(0, 270, DEGREE);
  private static final Amount FORCE = Amount.positive(20_000, NEWTON);

  private static final Shape PANEL =
      Shape.of(
          "panel",
          required("massKg", LoadShape.MASS),
          required("nearMm", LoadShape.POINT),
          required("farMm", LoadShape.POINT));

  private static final Shape PART =
      Shape.of(
          "weighed-part",
          required("massKg", LoadShape.MASS),
          required("xMm", COORDINATE),
          required("yMm", COORDINATE));

  private static final Shape WEIGHING =
      Shape.of(
          "weighing",
          required("massKg", LoadShape.MASS),
          required("handleMm", LoadShape.POINT),
          withDefault("opens", Choice.of(COUNTERCLOCKWISE, "clockwise"), COUNTERCLOCKWISE),
          withDefault("tiltDeg", Amount.between(-180, 180, DEGREE), 0),
          withDefault("angleDeg", ANGLE, 0),
          required("forceN", FORCE),
          optional("secondAngleDeg", ANGLE),
          optional("secondForceN", FORCE));

  /** One of the three. */
  public static final Shape SHAPE =
      Shape.of(
          "centre-asked",
          optional("panel", PANEL),
          optional("parts", new Many(PART, 1, 100)),
          optional("weighing", WEIGHING));

  private CentreForm() {}

  /** A refusal names every fault of the body. */
  public static Body read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (tree != null && faults.isEmpty()) {
      between(new JobTree(tree), faults);
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return body(new JobTree(tree));
  }

  private static void between(JobTree tree, List<Fault> faults) {
    List<String> given =
        SHAPE.fields().keySet().stream().filter(name -> tree.given("/" + name)).toList();
    if (given.size() != 1) {
      String all = String.join(" | ", SHAPE.fields().keySet());
      faults.add(new Fault("#", String.join(", ", given), all, "one-of-these"));
      return;
    }
    if (!given.get(0).equals("weighing")) {
      return;
    }
    boolean angle = tree.given("/weighing/secondAngleDeg");
    if (angle != tree.given("/weighing/secondForceN")) {
      String missing = angle ? "secondForceN" : "secondAngleDeg";
      String bound = (angle ? FORCE : ANGLE).bound().text();
      faults.add(new Fault("#/weighing/" + missing, null, bound, "missing"));
    } else if (angle) {
      double second = tree.number("/weighing/secondAngleDeg");
      double apart = Math.abs(second - tree.number("/weighing/angleDeg"));
      // Half a turn apart is the same position upside down.
      if (apart % 180 < APART || apart % 180 > 180 - APART) {
        faults.add(
            tree.fault("/weighing/secondAngleDeg", "15…165°", "weighed-too-near")
                .at("#/weighing/secondAngleDeg"));
      }
    }
    Point handle = tree.point("/weighing/handleMm");
    if (handle.distance() == 0) {
      faults.add(
          tree.fault("/weighing/handleMm", "≥ 1 mm", "handle-at-hinge").at("#/weighing/handleMm"));
    }
  }

  private static Body body(JobTree tree) {
    if (tree.given("/panel")) {
      return Body.panel(
          tree.number("/panel/massKg"), tree.point("/panel/nearMm"), tree.point("/panel/farMm"));
    }
    if (tree.given("/parts")) {
      return Body.of(
          IntStream.range(0, tree.size("/parts"))
              .mapToObj(i -> part(tree, "/parts/" + i))
              .toList());
    }
    double mass = tree.number("/weighing/massKg");
    Point handle = tree.point("/weighing/handleMm");
    Body.Weighing first = weighing(tree, "angleDeg", "forceN");
    return tree.given("/weighing/secondForceN")
        ? Body.weighed(mass, handle, first, weighing(tree, "secondAngleDeg", "secondForceN"))
        : Body.weighed(mass, handle, first.force());
  }

  private static Body part(JobTree tree, String at) {
    return new Body(
        tree.number(at + "/massKg"),
        new Point(tree.si(at + "/xMm", MILLIMETRE), tree.si(at + "/yMm", MILLIMETRE)));
  }

  private static Body.Weighing weighing(JobTree tree, String angle, String force) {
    int sense = COUNTERCLOCKWISE.equals(tree.text("/weighing/opens")) ? 1 : -1;
    double opened = sense * tree.si("/weighing/" + angle, DEGREE);
    return new Body.Weighing(
        opened + tree.si("/weighing/tiltDeg", DEGREE), tree.number("/weighing/" + force));
  }

  /** Where the centre of mass lies, as a job has it. */
  public record CentreAnswer(double massKg, Coordinates centreOfMassMm) {

    /** Of a point in the side view, in the unit of its field. */
    public record Coordinates(double x, double y) {

      static Coordinates millimetres(Point point) {
        return new Coordinates(MILLIMETRE.of(point.x()), MILLIMETRE.of(point.y()));
      }
    }

    public static CentreAnswer of(Body body) {
      return new CentreAnswer(body.mass(), Coordinates.millimetres(body.centre()));
    }
  }
}
