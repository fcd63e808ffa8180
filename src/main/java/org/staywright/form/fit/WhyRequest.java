package org.staywright.form.fit;

import static org.staywright.form.schema.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.job.Job;
import org.staywright.form.job.FitRequest;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

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
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (tree != null && tree.has("job")) {
      faults.addAll(JobForm.crossFaults(tree.get("job"), "#/job"));
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new WhyRequest(
        FitRequest.job(tree.get("job"), range), tree.get("partNumber").textValue());
  }
}
