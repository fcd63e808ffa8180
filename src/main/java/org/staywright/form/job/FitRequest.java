package org.staywright.form.job;

import static org.staywright.form.schema.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.staywright.fit.job.Job;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** What every question about one part in one job has in common. */
public final class FitRequest {

  private FitRequest() {}

  /** Job, part and count, and what else is asked. */
  public static Shape shape(String name, Field... more) {
    return Shape.of(
        name,
        Stream.concat(
                Stream.of(
                    required("job", JobShape.JOB),
                    required("partNumber", AnswerShape.PART_NUMBER),
                    required("count", new Whole(1, 8))),
                Stream.of(more))
            .toArray(Field[]::new));
  }

  /**
   * The body with its defaults filled in; a refusal names every fault of it.
   *
   * @param between adds what is wrong between fields that are each sound alone
   */
  public static JsonTree read(
      Shape shape, JsonText body, BiConsumer<JsonNode, List<Fault>> between) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = shape.read(body.tree(), "#", faults);
    if (tree != null && tree.has("job")) {
      faults.addAll(JobForm.crossFaults(tree.get("job"), "#/job"));
    }
    if (tree != null) {
      between.accept(tree, faults);
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new JsonTree(tree);
  }

  /** The job in a sound body, its faults placed there. */
  public static Job job(JsonNode job, Range range) {
    try {
      return JobForm.read(job, range);
    } catch (Refusal refusal) {
      throw new Refusal(
          refusal.faults().stream()
              .map(fault -> fault.at(fault.where().replaceFirst("^#", "#/job")))
              .toList());
    }
  }

  /** A seat has no handle, and with it no hand's force. */
  public static void handed(JsonNode tree, List<Fault> faults) {
    String type = tree.at("/job/load/type").asText("");
    if (SeatColumn.CODE.equals(type)) {
      faults.add(new Fault("#/job/load/type", type, "", "no-hand-curve"));
    }
  }

  /** A sound body. */
  public record JsonTree(JsonNode root) {

    public String text(String at) {
      return root.at(at).textValue();
    }

    public int whole(String at) {
      return root.at(at).intValue();
    }

    /** NaN where there is none. */
    public double number(String at) {
      JsonNode node = root.at(at);
      return node.isNumber() ? node.doubleValue() : Double.NaN;
    }

    public JsonNode job() {
      return root.get("job");
    }
  }
}
