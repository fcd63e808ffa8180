package org.staywright.document;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.fit.Fit;
import org.staywright.fit.FitCurve;
import org.staywright.fit.Job;
import org.staywright.fit.SeatFigures;
import org.staywright.wording.Wording;

/** The charts of a part in a job: of the force at the hand, or of a column under a seat. */
public final class FitCharts {

  /**
   * @param heading above it
   * @param drawing of it
   */
  public record Chart(String heading, Drawing drawing) {}

  private FitCharts() {}

  /** Those that can be taken away: a view that is a chart itself is one of them. */
  public static List<Drawing> files(Job job, Fit fit, Wording wording) {
    return Stream.concat(
            of(job, fit, wording).stream().map(Chart::drawing),
            Stream.of(SideView.of(job, fit, wording)))
        .filter(each -> each.readings() != null)
        .toList();
  }

  /** One at least, the most telling first. */
  public static List<Chart> of(Job job, Fit fit, Wording wording) {
    if (fit.outcome() instanceof SeatFigures) {
      return SeatChart.all(job, fit, wording);
    }
    Drawing hand =
        HandForceChart.of(
            FitCurve.of(job, fit),
            job.mechanism().kind(),
            job.requirements().maxHandForce(),
            wording);
    return List.of(new Chart(wording.text("document.hand-force-chart"), hand));
  }
}
