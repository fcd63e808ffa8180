package org.staywright.form.job;

import static org.staywright.form.schema.AnswerShape.END;
import static org.staywright.form.schema.AnswerShape.ENDS;
import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Shape;

/** Saved jobs and parts lists as they are sent. */
public final class JobAnswer {

  private static final Shape CHOICE =
      shape(
          "frozen-choice",
          numbers("count", "sets", "spares", "stockRevision"),
          List.of(
              required("partNumber", AnswerShape.PART_NUMBER),
              optional("fittings", ENDS),
              required("rodEndAt", END),
              required("brackets", new Flag()),
              required("evenIfMisfit", new Flag()),
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

  private JobAnswer() {}
}
