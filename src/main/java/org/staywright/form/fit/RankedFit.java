package org.staywright.form.fit;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts.RodEnd;

/** A part in a job as it is sent, with its rank among others. */
public record RankedFit(
    int rank,
    @Schema(ref = "part-number") String partNumber,
    int count,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable EndFittings fittings,
    @Schema(ref = "frame-or-moving") RodEnd rodEndAt,
    Verdict verdict,
    double score,
    @JsonUnwrapped ToldFit told) {

  /** Whether it meets all that is asked. */
  public enum Verdict {
    FITS,
    NEAR;

    static Verdict of(Fit fit) {
      return fit.fits() ? FITS : NEAR;
    }
  }

  /**
   * @param cautions what a fit calls for, in words
   */
  public static RankedFit of(Job job, Fit fit, int rank, Function<Fit, List<Note>> cautions) {
    return new RankedFit(
        rank,
        fit.part().number(),
        fit.count(),
        EndFittings.of(fit.rodFitting(), fit.tubeFitting()),
        fit.rodEndAt(),
        Verdict.of(fit),
        fit.score(),
        ToldFit.of(job, fit, rank, cautions));
  }
}
