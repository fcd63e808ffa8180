package org.staywright.form;

import static org.staywright.form.AnswerShape.END;
import static org.staywright.form.AnswerShape.ENDS;
import static org.staywright.form.AnswerShape.NUMBER;
import static org.staywright.form.AnswerShape.TEXT;
import static org.staywright.form.AnswerShape.numbers;
import static org.staywright.form.AnswerShape.series;
import static org.staywright.form.AnswerShape.shape;
import static org.staywright.form.Field.optional;
import static org.staywright.form.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.fit.Blocker;
import org.staywright.fit.Rejection;
import org.staywright.form.Kind.Anything;
import org.staywright.form.Kind.Choice;
import org.staywright.form.Kind.Many;
import org.staywright.part.Coded;

/** Rankings and hand forces as they are sent. */
public final class FitAnswer {

  public static final Shape HAND_CURVE =
      shape(
          "hand-curve",
          List.of(required("travelUnit", Choice.of("deg", "mm"))),
          series(
              "travel",
              "lengthMm",
              "openN",
              "closeN",
              "openWeakN",
              "closeWeakN",
              "openStrongN",
              "closeStrongN"));

  private static final Shape BOUNCE = shape("bounce", numbers("low", "middle", "high"));

  /** Where a hand moves the load, and of a column under a seat: each has its own. */
  private static final Shape FIGURES =
      shape(
          "figures",
          numbers("peakPressureBar", "constancy", "leadTimeDays"),
          Stream.of(
                  "setPrice",
                  "bucklingFactor",
                  "openingAngleDeg",
                  "travelMm",
                  "lengthClosedMm",
                  "lengthOpenMm",
                  "lengthMinMm",
                  "lengthMaxMm",
                  "compressedMm",
                  "extendedMm",
                  "compressedReserveMm",
                  "extendedReserveMm",
                  "handOpenMaxN",
                  "handCloseMaxN",
                  "handRmsN",
                  "handOpenMaxWeakN",
                  "handCloseMaxStrongN",
                  "holdRatioOpen",
                  "selfOpensFromDeg",
                  "selfOpensFromMm",
                  "selfOpensFromWeakDeg",
                  "selfOpensFromWeakMm",
                  "latchPushN",
                  "staysPutN",
                  "overCentreDeg",
                  "overCentreMm",
                  "staysFromDeg",
                  "staysFromMm",
                  "closedHoldNm",
                  "closedHoldN",
                  "closedHoldStrongNm",
                  "closedHoldStrongN",
                  "peakMountLoadN",
                  "stopLoadN",
                  "swingDeg",
                  "strokeMm",
                  "heightTravelMm",
                  "risesEmptyRatio",
                  "sinksUnderLightestRatio",
                  "thrustLoadN",
                  "lockLoadN",
                  "loweringRmsN")
              .map(name -> optional(name, NUMBER))
              .toList(),
          List.of(optional("bounceMm", BOUNCE)));

  private static final List<Field> FIT =
      List.of(
          required("rank", NUMBER),
          required("partNumber", JobShape.PART_NUMBER),
          required("count", NUMBER),
          optional("fittings", ENDS),
          required("rodEndAt", END),
          required("verdict", Choice.of("fits", "near")),
          required("score", NUMBER),
          required("figures", FIGURES),
          optional("inTime", InTimeAnswer.AT_WORST),
          required(
              "cautions",
              new Many(Shape.of("caution", required("code", TEXT), required("message", TEXT)))));

  static final Shape BLOCKER =
      Shape.of(
          "blocker",
          required("code", Choice.of(Blocker.Code.class)),
          optional("needed", NUMBER),
          optional("has", NUMBER),
          required("unit", TEXT));

  private static final Shape CHANGE =
      Shape.of(
          "change",
          required("path", new Choice(JobKnobs.paths(), List.of())),
          required("from", new Anything()),
          required("to", new Anything()),
          required("unit", TEXT));

  static final Shape FIT_SHAPE = shape("fit", FIT);

  static final Shape NEAR_SHAPE =
      shape(
          "near-fit",
          FIT,
          List.of(required("blockedBy", new Many(BLOCKER)), optional("clearedBy", CHANGE)));

  public static final Shape FITS =
      shape(
          "fits",
          numbers("considered", "fitsTotal", "nearTotal"),
          List.of(
              required(
                  "rejected",
                  shape(
                      "rejected",
                      numbers(
                          Stream.of(Rejection.values()).map(Coded::code).toArray(String[]::new)))),
              required("weights", shape("weights", numbers("effort", "margin", "price", "supply"))),
              required("fits", new Many(FIT_SHAPE)),
              required("near", new Many(NEAR_SHAPE))));

  private FitAnswer() {}
}
