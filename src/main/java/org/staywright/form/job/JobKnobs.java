package org.staywright.form.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.fit.clear.Knob;
import org.staywright.fit.job.Criterion;
import org.staywright.form.job.Turnable.Turn;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.part.Range;

/** The numbers of a job that could be changed to make a near part fit. */
public final class JobKnobs {

  /** Changes that cost as much as one spring more. */
  private static final double LENGTH_MM = 10;

  private static final double ANGLE_DEG = 4;

  /** The same of a requirement, as a share of it. */
  private static final double ASKED = 0.15;

  /** Mass, tolerance, friction and conditions are as they are; a change of them mends nothing. */
  private static final List<Turnable> PLACES =
      Stream.of(
              either("frameMm/x", (mounts, x) -> framed(mounts, x, mounts.frame().y())),
              either("frameMm/y", (mounts, y) -> framed(mounts, mounts.frame().x(), y)),
              either("movingMm/x", (mounts, x) -> moved(mounts, x, mounts.moving().y())),
              either("movingMm/y", (mounts, y) -> moved(mounts, mounts.moving().x(), y)),
              travelled("/load/openingAngleDeg", ANGLE_DEG),
              travelled("/load/travelMm", LENGTH_MM),
              travelled("/load/heightTravelMm", LENGTH_MM),
              Stream.of(Criterion.values()).flatMap(JobKnobs::asked))
          .flatMap(places -> places)
          .toList();

  private static final List<String> WORDS =
      List.of("/springCounts", "/fittings/rodEnd", "/fittings/tubeEnd");

  private JobKnobs() {}

  private interface Moving {
    Mounts of(Mounts mounts, double to);
  }

  private static Stream<Turnable> either(String mount, Moving moving) {
    Turn turn = (job, to) -> job.at(moving.of(job.mechanism().rigid().orElseThrow().mounts(), to));
    return Stream.of("0.1", "-0.1").map(step -> built("/mounts/" + mount, step, LENGTH_MM, turn));
  }

  private static Mounts framed(Mounts mounts, double x, double y) {
    return mounts.with(new Point(x, y), mounts.moving());
  }

  private static Mounts moved(Mounts mounts, double x, double y) {
    return mounts.with(mounts.frame(), new Point(x, y));
  }

  /** Less of a travel; a table of forces ends where it ends. */
  private static Stream<Turnable> travelled(String path, double ease) {
    Turn turn =
        (job, end) ->
            job.moving(
                job.mechanism().as(load -> load.to(end), table -> table, seat -> seat.to(end)));
    return Stream.of(built(path, "-0.1", ease, turn));
  }

  private static Turnable built(String path, String step, double ease, Turn turn) {
    return new Turnable(path, new BigDecimal(step), ease, null, turn);
  }

  private static Stream<Turnable> asked(Criterion criterion) {
    Turn turn = (job, to) -> job.asking(job.requirements().with(criterion, to));
    return criterion.yields().stream()
        .flatMap(
            yield ->
                criterion.asks().stream()
                    .map(
                        ask ->
                            new Turnable(
                                RequirementsShape.AT + ask.field(),
                                yield.step(),
                                ASKED,
                                yield,
                                turn)));
  }

  /** Every entry of a job that may have to be changed, as JSON pointers. */
  public static List<String> paths() {
    return Stream.concat(PLACES.stream().map(Turnable::path), WORDS.stream()).distinct().toList();
  }

  /**
   * @param tree a sound job with its defaults filled in
   * @param range that it is judged by
   */
  public static List<Knob> of(ObjectNode tree, Range range) {
    return Turnable.knobs(PLACES, tree, range);
  }
}
