package org.staywright.form.time;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.InTime;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.SpringState;
import org.staywright.form.job.CurveRequest;
import org.staywright.form.job.FitRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.ForceProfile;
import org.staywright.motion.Hand;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Coded;
import org.staywright.part.Range;
import org.staywright.unit.Fault;

/**
 * Which motion is asked for.
 *
 * @param of the part in its job
 * @param open whether it is let go open
 * @param corner of springs and load
 * @param kelvin of all there is, NaN for the corner's
 * @param failed springs that do nothing
 * @param hand at the handle
 * @param movingMass of a force profile, which does not tell, kg; NaN for the load's own
 */
public record MotionRequest(
    CurveRequest of,
    boolean open,
    Corner corner,
    double kelvin,
    int failed,
    Hand hand,
    double movingMass) {

  private static final String FROM_OPEN = "from-open";
  public static final String FROM_CLOSED = "from-closed";
  public static final String MOVING_MASS = "movingMassKg";
  private static final String LETS_GO = "lets-go";
  private static final String CASE = "case";
  private static final Amount MASS = Amount.positive(100_000, KILOGRAM);

  public static final Shape SHAPE =
      FitRequest.shape(
          "fit-motion",
          withDefault("release", Choice.of(FROM_OPEN, FROM_CLOSED), FROM_OPEN),
          withDefault("hand", Choice.of(LETS_GO, "pushes-on"), LETS_GO),
          withDefault("spring", Choice.of(SpringState.class), SpringState.NOMINAL.code()),
          withDefault("load", Choice.of(LoadState.class), LoadState.NOMINAL.code()),
          optional(CASE, Text.upTo(200)),
          optional("temperatureC", Amount.between(-60, 150, CELSIUS)),
          withDefault("failedSprings", new Whole(0, 8), 0),
          withDefault("handForceN", Amount.between(-5000, 5000, NEWTON), 0),
          optional(MOVING_MASS, MASS));

  /** A refusal names every fault of the body. */
  public static MotionRequest read(JsonText body, Range range) {
    FitRequest.JsonTree asked = FitRequest.read(SHAPE, body, MotionRequest::between);
    double force = asked.number("/handForceN");
    Corner corner =
        new Corner(
            Coded.of(SpringState.class, asked.text("/spring")).orElseThrow(),
            Coded.of(LoadState.class, asked.text("/load")).orElseThrow());
    return new MotionRequest(
        CurveRequest.of(asked, range),
        FROM_OPEN.equals(asked.text("/release")),
        corner,
        CELSIUS.si(asked.number("/temperatureC")),
        asked.whole("/failedSprings"),
        LETS_GO.equals(asked.text("/hand")) ? new Hand.LetsGo(force) : new Hand.PushesOn(force),
        asked.number("/" + MOVING_MASS));
  }

  /**
   * What is let go.
   *
   * @param fit of the part in its job
   */
  public MotionSetup scene(Fit fit) {
    InTime inTime = new InTime(of.job(), fit, movingMass);
    MotionSetup all = Double.isNaN(kelvin) ? inTime.scene(corner) : inTime.scene(corner, kelvin);
    MotionSetup placed = open ? all : all.from(all.course().start());
    return placed.with(fit.count() - failed, hand);
  }

  private static void between(JsonNode tree, List<Fault> faults) {
    int failed = tree.path("failedSprings").asInt();
    int count = tree.path("count").asInt(8);
    if (failed > count) {
      faults.add(new Fault("#/failedSprings", failed, "≤ count = " + count, "out-of-order"));
    }
    if (tree.path(CASE).isTextual()) {
      faults.add(new Fault("#/" + CASE, tree.get(CASE).textValue(), "null", "no-load-cases"));
    }
    String type = tree.at("/job/load/type").asText(null);
    boolean table = ForceProfile.CODE.equals(type);
    JsonNode mass = tree.path(MOVING_MASS);
    if (table && mass.isNull()) {
      faults.add(new Fault("#/" + MOVING_MASS, null, MASS.bound().text(), "moving-mass-missing"));
    } else if (type != null && !table && mass.isNumber()) {
      faults.add(new Fault("#/" + MOVING_MASS, mass.numberValue(), "", "moving-mass-known"));
    }
  }
}
