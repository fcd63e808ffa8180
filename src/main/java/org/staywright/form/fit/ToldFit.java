package org.staywright.form.fit;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.time.TimeFigures;
import org.staywright.form.time.InTimeAnswer;
import org.staywright.form.time.TravelUnit;

/** What is told of a fit, whatever its verdict: its figures and what they call for. */
record ToldFit(
    @Schema(ref = "figures") Map<String, Object> figures,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Worst worst,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable InTimeAnswer inTime,
    List<Note> cautions) {

  /** Rows whose motions are worth computing: it takes some ten milliseconds each. */
  private static final int MOVED_ROWS = 20;

  /** In which corner and where the worst comes. */
  record Worst(
      ExtremeAnswer handOpen,
      ExtremeAnswer handClose,
      ExtremeAnswer hold,
      ExtremeAnswer closedHold) {

    /** Null under a seat. */
    static @Nullable Worst of(TravelUnit unit, Fit fit) {
      return fit.outcome() instanceof Figures figures
          ? new Worst(
              ExtremeAnswer.of(unit, figures.hand().openWorst()),
              ExtremeAnswer.of(unit, figures.hand().closeWorst()),
              ExtremeAnswer.of(unit, figures.hold().open()),
              ExtremeAnswer.of(unit, figures.hold().closedLeast()))
          : null;
    }
  }

  /** Where on the way, and in which corner. */
  record ExtremeAnswer(
      double travel,
      @Schema(ref = "weak-or-strong") SpringState spring,
      @Schema(ref = "heavy-or-light") LoadState load,
      @JsonProperty("case") @Nullable String loadCase) {

    static ExtremeAnswer of(TravelUnit unit, Extreme extreme) {
      return new ExtremeAnswer(
          unit.of(extreme.travel()), extreme.corner().spring(), extreme.corner().load(), null);
    }
  }

  static ToldFit of(Job job, Fit fit, int rank, Function<Fit, List<Note>> cautions) {
    return new ToldFit(
        FitFigures.of(fit, job.mechanism().movement()),
        Worst.of(TravelUnit.of(job.mechanism()), fit),
        inTime(job, fit, rank),
        cautions.apply(fit));
  }

  private static @Nullable InTimeAnswer inTime(Job job, Fit fit, int rank) {
    Requirements asked = job.requirements();
    return asked.asksInTime() && rank <= MOVED_ROWS
        ? TimeFigures.of(job, fit).map(moves -> InTimeAnswer.of(moves, asked)).orElse(null)
        : null;
  }
}
