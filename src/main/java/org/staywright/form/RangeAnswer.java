package org.staywright.form;

import static org.staywright.form.AnswerShape.NUMBER;
import static org.staywright.form.AnswerShape.TEXT;
import static org.staywright.form.AnswerShape.numbers;
import static org.staywright.form.AnswerShape.series;
import static org.staywright.form.AnswerShape.shape;
import static org.staywright.form.Field.optional;
import static org.staywright.form.Field.required;

import java.util.List;
import org.staywright.form.Kind.Choice;
import org.staywright.form.Kind.Many;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;

/** Parts, end fittings and curves as they are sent. */
public final class RangeAnswer {

  private static final Shape PRICE =
      shape(
          "price",
          List.of(required("currency", TEXT), required("validUntil", TEXT)),
          numbers("pack", "orderMultiple"),
          List.of(required("breaks", new Many(shape("price-break", numbers("from", "each"))))));

  private static final List<Field> OFFER =
      List.of(
          optional("price", PRICE),
          required("stock", NUMBER),
          optional("stockDate", TEXT),
          required("leadTimeDays", NUMBER));

  public static final Shape PART =
      shape(
          "part",
          List.of(
              required("partNumber", JobShape.PART_NUMBER),
              required("description", TEXT),
              required("family", Choice.of(Family.class)),
              required("finish", Choice.of(Finish.class)),
              required("rodThread", TEXT),
              required("tubeThread", TEXT),
              required("mounting", Choice.of(Mounting.class)),
              required("derived", new Many(TEXT))),
          numbers(
              "forceClassN",
              "forceToleranceN",
              "rodDiameterMm",
              "tubeDiameterMm",
              "boreDiameterMm",
              "strokeMm",
              "extendedLengthMm",
              "compressedLengthMm",
              "gasVolumeMl",
              "oilVolumeMl",
              "endDampingMm",
              "frictionN",
              "coldFrictionFactor",
              "orificeDiameterMm",
              "orificeLengthMm",
              "compressionFlowFactor",
              "wallTimeConstantS",
              "minTemperatureC",
              "maxTemperatureC",
              "maxPressureBar",
              "massKg",
              "lossPercentPerYear",
              "lossPercentPer10kCycles"),
          OFFER);

  public static final Shape FITTING =
      shape(
          "fitting",
          List.of(
              required("partNumber", JobShape.PART_NUMBER),
              required("description", TEXT),
              required("type", Choice.of(FittingType.class)),
              required("finish", Choice.of(Finish.class)),
              optional("thread", TEXT),
              optional("ballDiameterMm", NUMBER),
              optional("pinDiameterMm", NUMBER)),
          numbers("lengthToCentreMm", "ratingN", "swingDeg", "massKg"),
          OFFER);

  public static final Shape PART_CURVE =
      shape(
          "part-curve",
          List.of(required("partNumber", JobShape.PART_NUMBER)),
          numbers("temperatureC", "progression"),
          series(
              "compressionMm",
              "gasForceN",
              "extendingN",
              "compressingN",
              "fastCompressingN",
              "pressureBar"));

  private RangeAnswer() {}
}
