package org.staywright.caution.fit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.staywright.caution.Caution;
import org.staywright.caution.CautionRule;
import org.staywright.caution.part.Always;
import org.staywright.caution.part.ChargePressure;
import org.staywright.caution.part.CrushGaps;
import org.staywright.caution.part.Disposal;
import org.staywright.caution.part.EndDampingIdle;
import org.staywright.caution.part.LockIsNoGuard;
import org.staywright.caution.part.PullsTogether;
import org.staywright.caution.part.ReplaceTogether;
import org.staywright.caution.part.RodDown;
import org.staywright.caution.part.Sticking;
import org.staywright.caution.part.StoredEnergy;
import org.staywright.caution.part.TemperatureLimits;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;

/** All rules, the nearest harm first. */
public final class Cautions {

  private static final List<CautionRule> RULES =
      List.of(
          new ChargePressure(),
          new StoredEnergy(),
          new Always(part -> part.charge().isPresent(), Caution.danger("never-open")),
          new Always(part -> part.charge().isEmpty(), Caution.danger("no-heat")),
          Always.of(Caution.danger("prop-first")),
          new SpringFails(),
          new BarelyHeld(),
          new BarelyShut(),
          new SecondHold(),
          new LockIsNoGuard(),
          new TwistWhenOneFails(),
          new OneSided(),
          new RodDown(),
          new EndDampingIdle(),
          new UndampedStop(),
          new Slams(false),
          new Slams(true),
          new LatchPressure(),
          new PullsTogether(),
          new CrushGaps(),
          new TemperatureLimits(),
          new NearCold(),
          new NearHot(),
          new NearPressure(),
          new NearBuckling(),
          new SideLoad(),
          new ReplaceTogether(),
          new Sticking(),
          new Disposal(),
          Always.of(Caution.note("local-codes")));

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
