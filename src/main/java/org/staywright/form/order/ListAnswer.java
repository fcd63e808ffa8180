package org.staywright.form.order;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.part.FittingType;

/** Parts lists as they are sent. */
public final class ListAnswer {

  private static final Shape TRANSPORT =
      shape(
          "transport",
          numbers("gasSpaceL", "chargeBar", "chargeBarL", "burstFactorToDeclare"),
          List.of(required("withinAdrSp283Figures", new Flag())));

  private static final Shape ALTERNATE =
      shape(
          "alternate",
          numbers("stock"),
          List.of(required("partNumber", AnswerShape.PART_NUMBER)),
          maybe("openingMoreN", "closingMoreN"));

  private static final Shape LINE =
      shape(
          "line",
          numbers("position", "quantity", "needed", "leadTimeDays", "stock", "stockRevision"),
          numbers("massKg", "lineMassKg"),
          maybe("unitPrice", "lineTotal", "minimum", "pack", "orderMultiple"),
          maybe("oneBatchOf", "shelfLifeYears"),
          List.of(
              required("partNumber", AnswerShape.PART_NUMBER),
              required("description", TEXT),
              required("kind", TEXT),
              optional("currency", TEXT),
              optional("validUntil", TEXT),
              optional("stockDate", TEXT),
              optional("transport", TRANSPORT),
              optional("alternate", ALTERNATE),
              required("notes", new Many(TEXT))));

  private static final Shape LISTED_JOB =
      shape(
          "listed-job",
          numbers("count", "sets", "spares", "stockRevision"),
          maybe("setCost", "setsInTenYears", "tenYearCost"),
          List.of(
              required("name", TEXT),
              required("partNumber", AnswerShape.PART_NUMBER),
              optional("chosenAlthough", TEXT)));

  public static final Shape PARTS_LIST =
      shape(
          "parts-list",
          numbers("leadTimeDays", "massKg"),
          maybe("total"),
          List.of(
              required("lines", new Many(LINE)),
              optional("currency", TEXT),
              optional("validUntil", TEXT),
              required("vatBasis", Choice.of("net")),
              required(
                  "unmatched",
                  new Many(
                      Shape.of(
                          "unmatched",
                          required("kind", Choice.of(FittingType.class)),
                          required("beside", AnswerShape.PART_NUMBER)))),
              required("jobs", new Many(LISTED_JOB))));

  private ListAnswer() {}

  private static List<Field> maybe(String... names) {
    return Stream.of(names).map(name -> optional(name, NUMBER)).toList();
  }
}
