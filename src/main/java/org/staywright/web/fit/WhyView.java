package org.staywright.web.fit;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.rank.Why;
import org.staywright.unit.Unit;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * Why a part is where it is, in words.
 *
 * @param partNumber asked about
 * @param counts one for each number of springs
 * @param job it is for
 * @param back address of its ranking
 * @param fault what is wrong with the number asked about, "" where a part has it
 */
public record WhyView(
    String partNumber, List<Count> counts, List<JobQuery.Pair> job, String back, String fault) {

  /**
   * @param count of springs
   * @param kind how the verdict looks
   * @param reasons in words
   * @param address of all about it
   */
  public record Count(int count, String kind, List<String> reasons, String address) {}

  public static WhyView unknown(JobQuery query, String partNumber) {
    String fault = query.bench().say("saved.judge.unknown");
    return new WhyView(partNumber, List.of(), query.pairs(), query.address(), fault);
  }

  public static WhyView of(JobQuery query, Job job, Why why, Cleared cleared, Wording wording) {
    List<Count> counts = new ArrayList<>();
    for (Why.Count each : why.counts()) {
      counts.add(count(query, job, why, each, cleared, wording));
    }
    return new WhyView(why.part().number(), counts, query.pairs(), query.address(), "");
  }

  private static Count count(
      JobQuery query, Job job, Why why, Why.Count each, Cleared cleared, Wording wording) {
    FitText text = FitText.in(wording);
    Assessment judged = each.assessment();
    boolean fits = judged.fit() != null && judged.fit().fits();
    Pick pick = new Pick(each.count(), why.part().number(), judged.fit() != null && !fits);
    if (judged.rejection() != null) {
      return new Count(each.count(), "none", List.of(out(judged, wording)), query.address(pick));
    }
    String rank = wording.number(each.rank(), 0);
    List<String> reasons = new ArrayList<>();
    reasons.add(wording.text(fits ? "why.fits" : "why.near", rank));
    judged.fit().blockedBy().forEach(by -> reasons.add(text.blocker(by, by.unit(job.mechanism()))));
    if (!fits) {
      reasons.add(cleared.of(1, judged.fit()));
    }
    return new Count(each.count(), fits ? "fits" : "near", reasons, query.address(pick));
  }

  private static String out(Assessment judged, Wording wording) {
    String reason = FitText.in(wording).rejection(judged.rejection());
    String by = by(judged, wording);
    return by.isEmpty() ? reason : wording.text("why.by", reason, by);
  }

  /** What a part has that is out, and the limit it misses; "" where that cannot be said. */
  static String by(Assessment judged, Wording wording) {
    Shortfall by = judged.shortfall();
    return by == null
        ? ""
        : wording.text("why.limit", shown(by.has(), by, wording), shown(by.needed(), by, wording));
  }

  private static String shown(double si, Shortfall by, Wording wording) {
    Unit unit = by.unit();
    return unit == null ? wording.shortest(si, 2) : wording.quantity(si, unit, 1);
  }
}
