package org.staywright.form.fit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.rank.Why;

/** Why a part is where it is. */
public record WhyAnswer(@Schema(ref = "part-number") String partNumber, List<WhyCount> counts) {

  /** So many of it. */
  public record WhyCount(
      int count,
      Outcome verdict,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Integer rank,
      List<BlockerAnswer> blockedBy,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable RejectionAnswer rejection) {

    static WhyCount of(Job job, Why.Count each, Function<Rejection, String> sentence) {
      Integer rank = each.rank() > 0 ? Integer.valueOf(each.rank()) : null;
      Rejection rejection = each.assessment().rejection();
      if (rejection != null) {
        return new WhyCount(
            each.count(),
            Outcome.REJECTED,
            rank,
            List.of(),
            RejectionAnswer.of(
                rejection, sentence.apply(rejection), each.assessment().shortfall()));
      }
      return new WhyCount(
          each.count(),
          each.assessment().fit().fits() ? Outcome.FITS : Outcome.NEAR,
          rank,
          BlockerAnswer.of(job.mechanism(), each.assessment().fit()),
          null);
    }
  }

  /** What came of it. */
  public enum Outcome {
    FITS,
    NEAR,
    REJECTED
  }

  /** The first reason against it. */
  public record RejectionAnswer(
      Rejection code,
      String message,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double needed,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double has,
      String unit) {

    static RejectionAnswer of(Rejection rejection, String message, @Nullable Shortfall by) {
      return by == null
          ? new RejectionAnswer(rejection, message, null, null, "")
          : new RejectionAnswer(
              rejection,
              message,
              FitFigures.in(by.unit(), by.needed()),
              FitFigures.in(by.unit(), by.has()),
              by.unit() == null ? "" : by.unit().symbol());
    }
  }

  /**
   * @param sentence of a rejection
   */
  public static WhyAnswer of(Job job, Why why, Function<Rejection, String> sentence) {
    return new WhyAnswer(
        why.part().number(),
        why.counts().stream().map(each -> WhyCount.of(job, each, sentence)).toList());
  }
}
