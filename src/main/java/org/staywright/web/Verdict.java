package org.staywright.web;

import static org.staywright.unit.Unit.NEWTON;

import java.util.Comparator;
import java.util.Map;
import org.staywright.fit.Blocker;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Ranking;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * The answer in one sentence.
 *
 * @param kind {@code fits}, {@code near} or {@code none}
 * @param sentence with newtons in it
 * @param books how many were judged and what came of them
 */
public record Verdict(String kind, String sentence, String books) {

  static Verdict of(Job job, Ranking ranking, Wording wording) {
    String books =
        wording.text(
            "page.verdict.books",
            wording.number(ranking.considered(), 0),
            wording.number(ranking.fitsTotal(), 0),
            wording.number(ranking.nearTotal(), 0));
    if (!ranking.fits().isEmpty()) {
      return new Verdict(
          "fits", FitWords.of(job, ranking.fits().get(0), wording).sentence(), books);
    }
    if (!ranking.near().isEmpty()) {
      Fit nearest = ranking.near().get(0);
      Blocker missed = nearest.blockedBy().get(0);
      String sentence =
          wording.text(
              "page.verdict.near",
              nearest.count(),
              force(nearest, wording),
              nearest.part().number(),
              FitText.in(wording).blocker(missed, missed.unit(job.mechanism())));
      return new Verdict("near", sentence, books);
    }
    return new Verdict("none", none(job, ranking, wording), books);
  }

  private static String none(Job job, Ranking ranking, Wording wording) {
    if (ranking.considered() == 0) {
      return wording.text("page.verdict.empty");
    }
    String reason =
        ranking.rejected().entrySet().stream()
            .max(Comparator.comparingInt(Map.Entry::getValue))
            .map(entry -> wording.text("fit.rejection." + entry.getKey().code()))
            .orElse("");
    return wording.text(
        "page.verdict.none",
        reason,
        wording.quantity(job.requirements().maxHandForce(), NEWTON, 0));
  }

  private static String force(Fit fit, Wording wording) {
    return wording.quantity(fit.part().spring().force(), NEWTON, 0);
  }
}
