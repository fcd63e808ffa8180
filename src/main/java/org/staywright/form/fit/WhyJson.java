package org.staywright.form.fit;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.rank.Why;
import org.staywright.form.job.FitRequest;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** Why a part is where it is, asked and answered. */
public final class WhyJson {

  /**
   * @param job it is to serve
   * @param partNumber of the spring
   */
  public record Request(Job job, String partNumber) {}

  public static final Shape REQUEST =
      Shape.of(
          "why", required("job", JobShape.JOB), required("partNumber", AnswerShape.PART_NUMBER));

  private static final Shape REJECTION =
      Shape.of(
          "rejection",
          required("code", Choice.of(Rejection.class)),
          required("message", TEXT),
          optional("needed", NUMBER),
          optional("has", NUMBER),
          required("unit", TEXT));

  public static final Shape ANSWER =
      Shape.of(
          "why-answer",
          required("partNumber", AnswerShape.PART_NUMBER),
          required(
              "counts",
              new Many(
                  Shape.of(
                      "why-count",
                      required("count", NUMBER),
                      required("verdict", Choice.of("fits", "near", "rejected")),
                      optional("rank", NUMBER),
                      optional("rejection", REJECTION),
                      required("blockedBy", new Many(FitAnswer.BLOCKER))))));

  private WhyJson() {}

  /** A refusal names every fault of the body. */
  public static Request read(JsonText body, Range range) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = REQUEST.read(body.tree(), "#", faults);
    if (tree != null && tree.has("job")) {
      faults.addAll(JobForm.crossFaults(tree.get("job"), "#/job"));
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new Request(FitRequest.job(tree.get("job"), range), tree.get("partNumber").textValue());
  }

  /**
   * @param sentence of a rejection
   */
  public static ObjectNode of(Job job, Why why, Function<Rejection, String> sentence) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("partNumber", why.part().number());
    ArrayNode counts = json.putArray("counts");
    for (Why.Count each : why.counts()) {
      Rejection rejection = each.assessment().rejection();
      ObjectNode entry = counts.addObject();
      entry.put("count", each.count());
      entry.put(
          "verdict",
          rejection != null ? "rejected" : each.assessment().fit().fits() ? "fits" : "near");
      if (each.rank() > 0) {
        entry.put("rank", each.rank());
      }
      ArrayNode blockers = entry.putArray("blockedBy");
      if (rejection == null) {
        each.assessment()
            .fit()
            .blockedBy()
            .forEach(blocker -> blockers.add(FitsJson.blocker(job.mechanism(), blocker)));
      } else {
        entry.set(
            "rejection",
            rejection(rejection, sentence.apply(rejection), each.assessment().shortfall()));
      }
    }
    return json;
  }

  private static ObjectNode rejection(Rejection rejection, String message, Shortfall by) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("code", rejection.code()).put("message", message);
    if (by != null) {
      Unit unit = by.unit() == null ? Unit.NEWTON : by.unit();
      json.set("needed", JsonNumber.of(by.needed(), unit));
      json.set("has", JsonNumber.of(by.has(), unit));
    }
    json.put("unit", by == null || by.unit() == null ? "" : by.unit().symbol());
    return json;
  }
}
