package org.staywright.form.mounts;

import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.Found;
import org.staywright.fit.mounts.Obstacle;
import org.staywright.form.fit.HandCurveAnswer;
import org.staywright.form.fit.NearFit;
import org.staywright.form.fit.Note;
import org.staywright.form.fit.RankedFit;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.JsonNumber;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;

/** Found mounts as they are sent. */
public record FoundAnswer(
    int places,
    List<ArrangementAnswer> arrangements,
    List<NearArrangement> near,
    @Nullable ObstacleAnswer obstacle) {

  /** Mounts, and the part that suits them. */
  public record ArrangementAnswer(
      @Schema(ref = "mounts") ObjectNode mounts, RankedFit fit, @JsonUnwrapped Around around) {}

  /** Mounts, and the part that misses least there. */
  public record NearArrangement(
      @Schema(ref = "mounts") ObjectNode mounts, NearFit fit, @JsonUnwrapped Around around) {}

  /** What else is told of either. */
  record Around(
      HandCurveAnswer curve,
      PerMount sensitivityNPerMm,
      PerMount.PerMountReserves sensitivityMmPerMm) {

    static Around of(Job there, Arrangement each) {
      return new Around(
          HandCurveAnswer.of(there, each.curve()),
          PerMount.perMillimetre(each.sensitivity().handForce()),
          PerMount.PerMountReserves.of(each.sensitivity()));
    }
  }

  /** Why nothing fits. */
  public record ObstacleAnswer(
      Obstacle.Code code, @Nullable Double neededMm, @Nullable Double hasMm, String message) {

    static @Nullable ObstacleAnswer of(@Nullable Obstacle obstacle, @Nullable String message) {
      return obstacle == null || message == null
          ? null
          : new ObstacleAnswer(
              obstacle.code(),
              MILLIMETRE.of(obstacle.needed()),
              MILLIMETRE.of(obstacle.has()),
              message);
    }
  }

  /**
   * @param job whose mounts were looked for
   * @param cautions what a fit calls for in a job, in words
   * @param message what stands in the way, in words; null where nothing does
   */
  public static FoundAnswer of(
      Job job, Found found, BiFunction<Job, Fit, List<Note>> cautions, @Nullable String message) {
    List<ArrangementAnswer> arrangements = new ArrayList<>();
    for (Arrangement each : found.arrangements()) {
      Job there = job.at(each.mounts());
      RankedFit fit =
          RankedFit.of(
              there, each.fit(), arrangements.size() + 1, one -> cautions.apply(there, one));
      arrangements.add(new ArrangementAnswer(tree(each.mounts()), fit, Around.of(there, each)));
    }
    List<NearArrangement> near = new ArrayList<>();
    for (Arrangement each : found.near()) {
      Job there = job.at(each.mounts());
      NearFit fit =
          NearFit.of(there, each.fit(), near.size() + 1, one -> cautions.apply(there, one));
      near.add(new NearArrangement(tree(each.mounts()), fit, Around.of(there, each)));
    }
    ObstacleAnswer obstacle = ObstacleAnswer.of(found.obstacle(), message);
    return new FoundAnswer(found.places(), arrangements, near, obstacle);
  }

  /** As a job has them, and in full: the mounts that were assessed are the mounts that are sent. */
  private static ObjectNode tree(Mounts mounts) {
    ObjectNode tree = JsonNodeFactory.instance.objectNode();
    put(tree.putObject("frameMm"), mounts.frame());
    put(tree.putObject("movingMm"), mounts.moving());
    tree.put("rodEndAt", AnswerJson.code(mounts.rodEnd()));
    tree.set("lateralOffsetMm", inFull(mounts.lateralOffset()));
    return tree;
  }

  private static void put(ObjectNode tree, Point point) {
    tree.set("x", inFull(point.x()));
    tree.set("y", inFull(point.y()));
  }

  private static JsonNode inFull(double metres) {
    return JsonNumber.of(MILLIMETRE.of(metres), 15);
  }
}
