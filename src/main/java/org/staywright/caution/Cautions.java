package org.staywright.caution;

import static org.staywright.caution.CautionRule.COMMON_PRACTICE;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.part.Part;

/** All rules, the nearest harm first. */
public final class Cautions {

  private static final List<CautionRule> RULES =
      List.of(
          new ChargePressure(),
          new Always("never-open", Severity.DANGER, COMMON_PRACTICE),
          new Always("prop-first", Severity.DANGER, COMMON_PRACTICE),
          new SpringFails(),
          new RodDown(),
          new LatchPressure(),
          new Always("pinch-points", Severity.WARNING, "ISO 13854, ISO 14120"),
          new TemperatureLimits(),
          new Always("no-side-load", Severity.WARNING, COMMON_PRACTICE),
          new ReplaceTogether(),
          new Always("sticking", Severity.NOTE, COMMON_PRACTICE),
          new Always("disposal", Severity.NOTE, COMMON_PRACTICE),
          new Always("local-codes", Severity.NOTE, COMMON_PRACTICE));

  private Cautions() {}

  /** What a part calls for wherever it is used. */
  public static List<Caution> of(Part part) {
    return judged(rule -> rule.of(part));
  }

  /** What a part calls for in a job. */
  public static List<Caution> of(Job job, Fit fit) {
    return judged(rule -> rule.of(job, fit));
  }

  private static List<Caution> judged(Function<CautionRule, Optional<Caution>> judge) {
    Stream<Caution> found = RULES.stream().map(judge).flatMap(Optional::stream);
    return found.sorted((a, b) -> a.severity().compareTo(b.severity())).toList();
  }
}
