package org.staywright.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.caution.fit.Cautions;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Alike;
import org.staywright.fit.rank.Ranking;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Input;
import org.staywright.web.fit.CautionView;
import org.staywright.web.fit.Cleared;
import org.staywright.web.fit.FitRow;
import org.staywright.web.query.JobQuery;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * A ranking in words.
 *
 * @param job as it was ranked, for what is done next with it
 * @param verdict first
 * @param cautions of the best that stand beside it
 * @param fitsTotal all that fit, shown or not
 * @param nearTotal all that are near, shown or not
 * @param fits shown
 * @param near shown
 * @param rejected counts with their reasons, most first
 * @param rankBy the choice of order
 */
public record RankingView(
    List<JobQuery.Pair> job,
    Verdict verdict,
    List<CautionView> cautions,
    int fitsTotal,
    int nearTotal,
    List<FitRow> fits,
    List<FitRow> near,
    List<Tally> rejected,
    Input rankBy) {

  /**
   * How many are out for a reason.
   *
   * @param text of both
   * @param list address of which they are
   */
  public record Tally(String text, String list) {}

  static RankingView of(
      JobQuery query,
      Job job,
      Ranking ranking,
      Cleared cleared,
      FormFields fields,
      Wording wording) {
    List<FitRow> near = near(job, ranking.near(), cleared, wording);
    return new RankingView(
        query.pairs(),
        Verdict.of(job, ranking, near.isEmpty() ? "" : near.get(0).cleared(), wording),
        ranking.fits().stream()
            .findFirst()
            .map(best -> CautionView.foremost(Cautions.of(job, best), wording))
            .orElse(List.of()),
        ranking.fitsTotal(),
        ranking.nearTotal(),
        Alike.of(ranking.fits(), job.limit()).stream()
            .map(group -> FitRow.of(job, group, wording))
            .toList(),
        near,
        ranking.rejected().entrySet().stream()
            .filter(entry -> entry.getValue() > 0)
            .sorted((one, other) -> other.getValue() - one.getValue())
            .map(
                entry ->
                    new Tally(
                        wording.text(
                            "ranking.tally",
                            wording.number(entry.getValue(), 0),
                            FitText.in(wording).rejection(entry.getKey())),
                        query.rejected(entry.getKey()).toString()))
            .toList(),
        fields.of("rankBy"));
  }

  /** The first that fits, else the first that is near; null where there is neither. */
  public FitRow best() {
    return Stream.concat(fits.stream(), near.stream()).findFirst().orElse(null);
  }

  private static List<FitRow> near(Job job, List<Fit> near, Cleared cleared, Wording wording) {
    List<FitRow> rows = new ArrayList<>();
    for (Fit fit : near.subList(0, Math.min(job.limit(), near.size()))) {
      int rank = rows.size() + 1;
      rows.add(FitRow.of(rank, job, fit, cleared.of(rank, fit), wording));
    }
    return rows;
  }
}
