package org.staywright.form.replace;

import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.KILOGRAM_FORCE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.POUND_FORCE;

import java.util.List;
import java.util.regex.Pattern;
import org.staywright.fit.replace.ScaleReading.Direction;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** What is sent where a replacement is looked for. */
public final class ReplacementShape {

  static final String CENTRES = "centre-to-centre";

  /** 95 % half-widths of calliper and tape: common practice, no source. mm. */
  private static final double CALLIPER = 0.1;

  private static final double CALLIPER_ON_PAINT = 0.3;
  private static final double TAPE = 2;
  private static final double TAPE_IN_PLACE = 3;

  private static final Amount THICKNESS = Amount.positive(200, MILLIMETRE);
  private static final Amount LENGTH = Amount.positive(5000, MILLIMETRE);
  private static final Amount SHORT = Amount.positive(2000, MILLIMETRE);
  private static final Amount DOUBT = Amount.between(0.01, 500, MILLIMETRE);
  static final Choice FORCE_UNIT = Choice.of("N", "lbf", "kgf");
  static final Amount FORCE = new Amount(Bound.above(0, 100_000, ""));

  static final Shape MEASURED =
      Shape.of(
          "measured-spring",
          optional("rodDiameterMm", reading("rod-reading", THICKNESS, CALLIPER)),
          optional("tubeDiameterMm", reading("tube-reading", THICKNESS, CALLIPER_ON_PAINT)),
          optional("extendedLengthMm", length("extended-reading")),
          optional("strokeMm", reading("stroke-reading", SHORT, TAPE_IN_PLACE)),
          optional("exposedRodMm", reading("exposed-reading", SHORT, TAPE)),
          optional("tubeLengthMm", reading("tube-length-reading", LENGTH, TAPE)),
          optional("compressedLengthMm", length("compressed-reading")),
          optional("ballDiameterMm", reading("ball-reading", THICKNESS, CALLIPER_ON_PAINT)),
          optional("centresClosedMm", reading("closed-reading", LENGTH, TAPE_IN_PLACE)),
          optional("centresOpenMm", reading("open-reading", LENGTH, TAPE_IN_PLACE)),
          optional(
              "printedForce",
              Shape.of(
                  "printed-force",
                  required("value", FORCE),
                  withDefault("unit", FORCE_UNIT, "N"),
                  optional("plusMinus", FORCE))),
          optional(
              "scaleReading",
              Shape.of(
                  "scale-reading",
                  required("force", FORCE),
                  withDefault("unit", FORCE_UNIT, "N"),
                  optional("plusMinus", FORCE),
                  required("atCompressionMm", SHORT),
                  withDefault("temperatureC", Amount.between(-40, 80, CELSIUS), 20),
                  required("direction", Choice.of(Direction.class)))),
          optional("rodEnd", JobShape.fittingWish()),
          optional("tubeEnd", JobShape.fittingWish()),
          optional("rodThread", Text.upTo(16)),
          optional("finish", Choice.of(Finish.class)),
          withDefault("springCount", new Whole(1, 8), 1),
          withDefault("damping", Choice.of("unknown", "end-damped", "undamped"), "unknown"),
          optional("family", Choice.of(Family.class)),
          optional("handleTravelMm", LENGTH),
          optional(SurveyForm.NAME, SurveyForm.SHAPE),
          optional(
              "madeIn", new Text(7, Pattern.compile("(19|20)\\d\\d(-\\d\\d)?"), "YYYY | YYYY-MM")));

  public static final Shape REPLACEMENT =
      shape(
          "replacement",
          List.copyOf(MEASURED.fields().values()),
          List.of(withDefault("limit", new Whole(1, 200), 20)));

  private ReplacementShape() {}

  static Unit unit(String symbol) {
    return switch (symbol) {
      case "lbf" -> POUND_FORCE;
      case "kgf" -> KILOGRAM_FORCE;
      default -> NEWTON;
    };
  }

  private static Shape reading(String name, Amount of, double plusMinus) {
    return Shape.of(name, required("value", of), withDefault("plusMinus", DOUBT, plusMinus));
  }

  private static Shape length(String name) {
    return Shape.of(
        name,
        required("value", LENGTH),
        withDefault("plusMinus", DOUBT, TAPE),
        withDefault("measured", Choice.of(CENTRES, "without-fittings"), CENTRES));
  }
}
