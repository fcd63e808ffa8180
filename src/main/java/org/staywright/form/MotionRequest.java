package org.staywright.form;

import static org.staywright.form.Field.optional;
import static org.staywright.form.Field.withDefault;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.staywright.form.Kind.Amount;
import org.staywright.form.Kind.Choice;
import org.staywright.form.Kind.Whole;
import org.staywright.mechanism.ForceProfile;
import org.staywright.part.Range;
import org.staywright.unit.Fault;

/**
 * Which motion is asked for.
 *
 * @param of the part in its job
 * @param open whether it is let go open
 * @param kelvin of all there is
 * @param failed springs that do nothing
 * @param hand force, above zero where it opens, N
 * @param movingMass of a force profile, which does not tell, kg; NaN for the load's own
 */
public record MotionRequest(
    CurveRequest of, boolean open, double kelvin, int failed, double hand, double movingMass) {

  private static final String FROM_OPEN = "from-open";
  public static final String FROM_CLOSED = "from-closed";
  public static final String MOVING_MASS = "movingMassKg";
  private static final Amount MASS = Amount.positive(100_000, KILOGRAM);

  public static final Shape SHAPE =
      FitRequest.shape(
          "fit-motion",
          withDefault("release", Choice.of(FROM_OPEN, FROM_CLOSED), FROM_OPEN),
          withDefault("temperatureC", Amount.between(-60, 150, CELSIUS), 20),
          withDefault("failedSprings", new Whole(0, 8), 0),
          withDefault("handForceN", Amount.between(-5000, 5000, NEWTON), 0),
          optional(MOVING_MASS, MASS));

  /** A refusal names every fault of the body. */
  public static MotionRequest read(JsonText body, Range range) {
    FitRequest.JsonTree asked = FitRequest.read(SHAPE, body, MotionRequest::between);
    return new MotionRequest(
        CurveRequest.of(asked, range),
        FROM_OPEN.equals(asked.text("/release")),
        CELSIUS.si(asked.number("/temperatureC")),
        asked.whole("/failedSprings"),
        asked.number("/handForceN"),
        asked.number("/" + MOVING_MASS));
  }

  private static void between(JsonNode tree, List<Fault> faults) {
    int failed = tree.path("failedSprings").asInt();
    int count = tree.path("count").asInt(8);
    if (failed > count) {
      faults.add(new Fault("#/failedSprings", failed, "≤ count = " + count, "out-of-order"));
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
