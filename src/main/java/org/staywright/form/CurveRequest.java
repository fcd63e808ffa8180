package org.staywright.form;

import static org.staywright.form.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.Job;
import org.staywright.form.Kind.Whole;
import org.staywright.mechanism.SeatColumn;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * Which curve is asked for.
 *
 * @param job the springs are to serve
 * @param partNumber of the spring
 * @param count of equal springs
 */
public record CurveRequest(Job job, String partNumber, int count) {

  public static final Shape SHAPE =
      Shape.of(
          "fit-curve",
          required("job", JobShape.JOB),
          required("partNumber", JobShape.PART_NUMBER),
          required("count", new Whole(1, 8)));

  /** A refusal names every fault of the body. */
  public static CurveRequest read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (tree != null && tree.has("job")) {
      faults.addAll(JobForm.crossFaults(tree.get("job"), "#/job"));
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    JsonNode type = tree.at("/job/load/type");
    if (SeatColumn.CODE.equals(type.textValue())) {
      throw new Refusal(new Fault("#/job/load/type", type.textValue(), "", "no-hand-curve"));
    }
    return new CurveRequest(
        JobForm.read(tree.get("job")),
        tree.get("partNumber").textValue(),
        tree.get("count").intValue());
  }
}
