package org.staywright.form;

import static org.staywright.form.AnswerShape.END;
import static org.staywright.form.AnswerShape.ENDS;
import static org.staywright.form.AnswerShape.NUMBER;
import static org.staywright.form.AnswerShape.TEXT;
import static org.staywright.form.AnswerShape.numbers;
import static org.staywright.form.AnswerShape.shape;
import static org.staywright.form.Field.optional;
import static org.staywright.form.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.form.Kind.Anything;
import org.staywright.form.Kind.Choice;
import org.staywright.form.Kind.Flag;
import org.staywright.form.Kind.Many;
import org.staywright.part.FittingType;

/** Saved jobs and parts lists as they are sent. */
public final class JobAnswer {

  private static final Shape CHOICE =
      shape(
          "frozen-choice",
          numbers("count", "sets", "spares", "stockRevision"),
          List.of(
              required("partNumber", JobShape.PART_NUMBER),
              required("fittings", ENDS),
              required("rodEndAt", END),
              required("brackets", new Flag()),
              required("made", TEXT)));

  public static final Shape SAVED_JOB =
      shape(
          "saved-job",
          List.of(required("id", NUMBER), required("created", TEXT), required("changed", TEXT)),
          List.copyOf(JobShape.JOB.fields().values()),
          List.of(optional("choice", CHOICE)));

  /** A job as it may be sent back: what only we set is read over. */
  public static final Shape CHANGED_JOB =
      shape(
          "changed-job",
          List.copyOf(JobShape.JOB.fields().values()),
          Stream.of("id", "created", "changed", "choice")
              .map(name -> optional(name, new Anything()))
              .toList());

  public static final Shape PARTS_LIST =
      shape(
          "parts-list",
          List.of(
              required(
                  "lines",
                  new Many(
                      shape(
                          "line",
                          numbers("position", "quantity", "needed", "leadTimeDays", "stock"),
                          List.of(
                              required("partNumber", JobShape.PART_NUMBER),
                              required("description", TEXT),
                              required("kind", TEXT),
                              optional("unitPrice", NUMBER),
                              optional("lineTotal", NUMBER),
                              optional("alternate", JobShape.PART_NUMBER))))),
              optional("total", NUMBER),
              optional("currency", TEXT),
              optional("validUntil", TEXT),
              required("vatBasis", Choice.of("net")),
              required("leadTimeDays", NUMBER),
              required(
                  "unmatched",
                  new Many(
                      Shape.of(
                          "unmatched",
                          required("kind", Choice.of(FittingType.class)),
                          required("beside", JobShape.PART_NUMBER))))));

  private JobAnswer() {}
}
