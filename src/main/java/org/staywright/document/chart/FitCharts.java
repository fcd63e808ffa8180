package org.staywright.document.chart;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.document.draw.Drawing;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
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
    return fit.outcome()
        .as(
            figures -> List.of(hand(HandForceChart.of(job, fit, figures, wording))),
            seat -> SeatChart.all(job, fit.part(), seat, wording));
  }

  /** The same for a page. */
  public static List<Chart> forPaper(Job job, Fit fit, Wording wording) {
    return fit.outcome()
        .as(
            figures -> List.of(hand(HandForceChart.forPaper(job, fit, figures, wording))),
            seat -> SeatChart.forPaper(job, fit.part(), seat, wording));
  }

  private static Chart hand(Drawing drawing) {
    return new Chart(drawing.title(), drawing);
  }
}
