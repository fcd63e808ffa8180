package org.staywright.form.fit;

import static org.staywright.form.schema.Field.required;

import org.staywright.fit.job.Job;
import org.staywright.form.job.FitRequest;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;

/**
 * Why a part is where it is, asked.
 *
 * @param job it is to serve
 * @param partNumber of the spring
 */
public record WhyRequest(Job job, String partNumber) {

  public static final Shape SHAPE =
      Shape.of(
          "why", required("job", JobShape.JOB), required("partNumber", AnswerShape.PART_NUMBER));

  /** A refusal names every fault of the body. */
  public static WhyRequest read(JsonText body, Range range) {
    FitRequest.JsonTree asked = FitRequest.read(SHAPE, body, (tree, faults) -> {});
    return new WhyRequest(FitRequest.job(asked.job(), range), asked.text("/partNumber"));
  }
}
