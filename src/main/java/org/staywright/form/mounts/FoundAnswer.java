package org.staywright.form.mounts;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.List;
import org.staywright.fit.mounts.Obstacle;
import org.staywright.form.fit.FitAnswer;
import org.staywright.form.job.LoadShape;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;

/** Found mounts, and long work, as they are sent. */
public final class FoundAnswer {

  private static final Shape SLOPE =
      Shape.of("slope", optional("x", NUMBER), optional("y", NUMBER));

  private static final Shape PER_MOUNT =
      Shape.of("per-mount", required("frame", SLOPE), required("moving", SLOPE));

  private static final Shape RESERVES =
      Shape.of(
          "per-mount-reserves",
          required("compressedReserve", PER_MOUNT),
          required("extendedReserve", PER_MOUNT));

  private static final Shape OBSTACLE =
      Shape.of(
          "obstacle",
          required("code", Choice.of(Obstacle.Code.class)),
          optional("neededMm", NUMBER),
          optional("hasMm", NUMBER),
          required("message", TEXT));

  public static final Shape FOUND =
      shape(
          "found-mounts",
          numbers("places"),
          List.of(
              required("arrangements", new Many(arrangement("arrangement", FitAnswer.FIT_SHAPE))),
              required("near", new Many(arrangement("near-arrangement", FitAnswer.NEAR_SHAPE))),
              optional("obstacle", OBSTACLE)));

  public static final Shape TASK =
      shape(
          "task",
          numbers("done", "total"),
          List.of(
              required("state", Choice.of("queued", "running", "done", "failed", "stopped")),
              optional("result", new Anything())));

  private FoundAnswer() {}

  private static Shape arrangement(String name, Shape fit) {
    return Shape.of(
        name,
        required("mounts", LoadShape.MOUNTS),
        required("fit", fit),
        required("curve", FitAnswer.HAND_CURVE),
        required("sensitivityNPerMm", PER_MOUNT),
        required("sensitivityMmPerMm", RESERVES));
  }
}
