package org.staywright.form.job;

import org.staywright.fit.job.Job;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;

/**
 * Which curve is asked for.
 *
 * @param job the springs are to serve
 * @param partNumber of the spring
 * @param count of equal springs
 */
public record CurveRequest(Job job, String partNumber, int count) {

  public static final Shape SHAPE = FitRequest.shape("fit-curve");

  /** A refusal names every fault of the body. */
  public static CurveRequest read(JsonText body, Range range) {
    return of(FitRequest.read(SHAPE, body, FitRequest::handed), range);
  }

  public static CurveRequest of(FitRequest.JsonTree asked, Range range) {
    return new CurveRequest(
        FitRequest.job(asked.job(), range), asked.text("/partNumber"), asked.whole("/count"));
  }
}
