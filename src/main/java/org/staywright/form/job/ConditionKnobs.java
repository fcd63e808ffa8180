package org.staywright.form.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.staywright.fit.clear.Knob;
import org.staywright.fit.job.Job.Conditions;
import org.staywright.form.job.Turnable.Turn;
import org.staywright.part.Range;

/**
 * How a job is used, in numbers: nobody gives way on them, but from where on a part holds can be
 * said by them.
 */
public final class ConditionKnobs {

  /** What weighs as much as the rest of them, when the nearest is told: our choice. */
  private static final double KELVINS = 10;

  private static final double YEARS = 2;
  private static final double DEGREES = 3;

  private static final List<Turnable> PLACES =
      List.of(
          place(
              "/conditions/minC",
              "0.5",
              KELVINS,
              (job, to) -> {
                Conditions now = job.conditions();
                return to > now.nominal()
                    ? null
                    : job.under(
                        new Conditions(
                            to, now.nominal(), now.hottest(), now.years(), now.cyclesPerYear()));
              }),
          place(
              "/conditions/maxC",
              "-0.5",
              KELVINS,
              (job, to) -> {
                Conditions now = job.conditions();
                return to < now.nominal()
                    ? null
                    : job.under(
                        new Conditions(
                            now.coldest(), now.nominal(), to, now.years(), now.cyclesPerYear()));
              }),
          place(
              "/conditions/serviceYears",
              "-0.1",
              YEARS,
              (job, to) -> {
                Conditions now = job.conditions();
                return job.under(
                    new Conditions(
                        now.coldest(), now.nominal(), now.hottest(), to, now.cyclesPerYear()));
              }),
          tilt("0.1"),
          tilt("-0.1"));

  private ConditionKnobs() {}

  private static Turnable tilt(String step) {
    return place(
        "/load/tiltDeg", step, DEGREES, (job, to) -> job.moving(job.mechanism().tilted(to)));
  }

  private static Turnable place(String path, String step, double ease, Turn turn) {
    return new Turnable(path, new BigDecimal(step), ease, null, turn);
  }

  /** Every entry of a job that one may be, as JSON pointers. */
  public static List<String> paths() {
    return PLACES.stream().map(Turnable::path).distinct().toList();
  }

  /**
   * @param tree a sound job with its defaults filled in
   * @param range that it is judged by
   */
  public static List<Knob> of(ObjectNode tree, Range range) {
    return Turnable.knobs(PLACES, tree, range);
  }
}
