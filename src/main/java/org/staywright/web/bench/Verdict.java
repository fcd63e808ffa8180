package org.staywright.web.bench;

import static org.staywright.unit.Unit.NEWTON;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.web.fit.FitWords;
import org.staywright.wording.BareText;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * The answer first.
 *
 * @param kind {@code fits}, {@code near} or {@code none}
 * @param enough that no spring is needed, "" where one is
 * @param sentences what the best does, newtons in each; or why there is none
 * @param bare the load without a spring, "" where that stands in {@code enough}
 * @param damperDoes whether a damper alone would do
 * @param books how many were judged and what came of them
 */
public record Verdict(
    String kind,
    String enough,
    List<String> sentences,
    String bare,
    boolean damperDoes,
    String books) {

  /**
   * @param cleared what would make the nearest fit, "" for nothing that is known
   */
  static Verdict of(Job job, Ranking ranking, String cleared, Wording wording) {
    Bare load = ranking.bare();
    BareText text =
        load == null
            ? null
            : BareText.of(load, Figure.OPENING_ANGLE.unit(job.mechanism().movement()), wording);
    String bare = text == null ? "" : text.sentence();
    boolean enough = load != null && load.content();
    return new Verdict(
        kind(job, ranking, wording),
        enough ? bare : "",
        sentences(job, ranking, cleared, wording),
        enough ? "" : bare,
        text != null && text.damperDoes(),
        wording.text(
            "verdict.books",
            wording.number(ranking.considered(), 0),
            wording.number(ranking.fitsTotal(), 0),
            wording.number(ranking.nearTotal(), 0)));
  }

  private static String kind(Job job, Ranking ranking, Wording wording) {
    if (!ranking.fits().isEmpty()) {
      return FitWords.of(job, ranking.fits().get(0), wording).verdict();
    }
    if (!ranking.springNeeded()) {
      return "fits";
    }
    return ranking.near().isEmpty() ? "none" : "near";
  }

  private static List<String> sentences(Job job, Ranking ranking, String cleared, Wording wording) {
    if (!ranking.fits().isEmpty()) {
      return FitWords.of(job, ranking.fits().get(0), wording).sentences();
    }
    if (ranking.near().isEmpty()) {
      return List.of(none(job, ranking, wording));
    }
    String near = near(job, ranking.near().get(0), wording);
    return cleared.isEmpty() ? List.of(near) : List.of(near, cleared);
  }

  /** All that the nearest misses. */
  private static String near(Job job, Fit nearest, Wording wording) {
    return wording.text(
        "verdict.near",
        nearest.count(),
        wording.quantity(nearest.part().spring().force(), NEWTON, 0),
        nearest.part().number(),
        FitText.in(wording).blockers(nearest.blockedBy(), by -> by.unit(job.mechanism())));
  }

  private static String none(Job job, Ranking ranking, Wording wording) {
    if (ranking.considered() == 0) {
      return wording.text("verdict.empty");
    }
    String reason =
        ranking.rejected().entrySet().stream()
            .max(Comparator.comparingInt(Map.Entry::getValue))
            .map(entry -> wording.text("fit.rejection." + entry.getKey().code()))
            .orElse("");
    return wording.text(
        "verdict.none", reason, wording.quantity(job.requirements().maxHandForce(), NEWTON, 0));
  }
}
