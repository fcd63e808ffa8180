package org.staywright.form.part;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.series;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.spring.Locking;

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

  private static final Choice LOCKING =
      new Choice(Stream.of(Locking.values()).map(Locking::code).toList(), List.of());

  public static final Shape PART =
      shape(
          "part",
          List.of(
              required("partNumber", AnswerShape.PART_NUMBER),
              required("description", TEXT),
              required("family", Choice.of(Family.class)),
              required("finish", Choice.of(Finish.class)),
              required("rodThread", TEXT),
              required("tubeThread", TEXT),
              required("mounting", Choice.of(Mounting.class)),
              required("derived", new Many(TEXT)),
              optional("locking", LOCKING)),
          measured(),
          OFFER);

  public static final Shape FITTING =
      shape(
          "fitting",
          List.of(
              required("partNumber", AnswerShape.PART_NUMBER),
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
          List.of(required("partNumber", AnswerShape.PART_NUMBER)),
          numbers("temperatureC", "progression"),
          series(
              "compressionMm",
              "gasForceN",
              "extendingN",
              "compressingN",
              "fastCompressingN",
              "pressureBar"));

  public static final Shape LOCKED_CURVE =
      shape("locked-curve", numbers("stiffnessNPerMm"), series("deflectionMm", "slowN", "fastN"));

  private RangeAnswer() {}

  /** The numbers of a part: required where every family has them. */
  private static List<Field> measured() {
    return Stream.of(PartColumn.values())
        .map(
            column ->
                Stream.of(Family.values())
                        .allMatch(family -> PartColumn.of(family).contains(column))
                    ? required(column.field(), NUMBER)
                    : optional(column.field(), NUMBER))
        .toList();
  }
}
