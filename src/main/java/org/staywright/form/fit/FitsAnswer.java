package org.staywright.form.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.clear.Change;
import org.staywright.fit.clear.Clearing;
import org.staywright.fit.clear.HoldsFrom;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Weights;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Shape;
import org.staywright.part.Coded;

/** A ranking as it is sent. */
public record FitsAnswer(
    int considered,
    boolean springNeeded,
    @Nullable BareAnswer bare,
    int fitsTotal,
    int nearTotal,
    @Schema(ref = "rejected") Map<String, Integer> rejected,
    Weights weights,
    List<RankedFit> fits,
    List<NearFit> near) {

  /** By each reason. */
  public static final Shape REJECTED =
      AnswerShape.shape(
          "rejected",
          AnswerShape.numbers(
              Stream.of(Rejection.values()).map(Coded::code).toArray(String[]::new)));

  /**
   * @param job that was ranked for
   * @param cautions what a fit calls for, in words
   * @param clearing of the first near rows
   * @param holdsFrom of those that nothing clears
   */
  public static FitsAnswer of(
      Job job,
      Ranking ranking,
      Function<Fit, List<Note>> cautions,
      Clearing clearing,
      HoldsFrom holdsFrom) {
    List<RankedFit> fits = new ArrayList<>();
    ranking.fits().forEach(fit -> fits.add(RankedFit.of(job, fit, fits.size() + 1, cautions)));
    List<NearFit> near = new ArrayList<>();
    for (Fit fit : ranking.near()) {
      boolean solved = near.size() < Clearing.ROWS;
      Optional<Change> cleared = solved ? clearing.of(fit) : Optional.empty();
      Optional<Change> holds = solved && cleared.isEmpty() ? holdsFrom.of(fit) : Optional.empty();
      near.add(NearFit.of(job, fit, near.size() + 1, cautions, cleared, holds));
    }
    return new FitsAnswer(
        ranking.considered(),
        ranking.springNeeded(),
        BareAnswer.of(ranking.bare()),
        ranking.fitsTotal(),
        ranking.nearTotal(),
        rejected(ranking),
        job.weights(),
        fits,
        near);
  }

  private static Map<String, Integer> rejected(Ranking ranking) {
    Map<String, Integer> rejected = new LinkedHashMap<>();
    for (Rejection reason : Rejection.values()) {
      rejected.put(reason.code(), ranking.rejected().getOrDefault(reason, 0));
    }
    return rejected;
  }
}
