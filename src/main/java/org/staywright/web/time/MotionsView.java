package org.staywright.web.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.staywright.document.chart.FitCharts;
import org.staywright.document.chart.MotionChart;
import org.staywright.document.draw.Drawing;
import org.staywright.fit.job.Job;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.TimeFigures.Case;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.motion.Motion;
import org.staywright.web.chart.Graph;
import org.staywright.web.fit.InTimeText;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/**
 * The motions of a fit that its figures are taken from.
 *
 * @param rows a motion each
 * @param charts over time
 */
public record MotionsView(List<Row> rows, List<Graph> charts) {

  /** A motion in figures. */
  public record Row(
      String what,
      String corner,
      String end,
      String time,
      String speed,
      String energy,
      String load,
      String gas) {}

  static MotionsView of(Job job, TimeFigures figures, Wording wording) {
    Telling telling = new Telling(job, figures, new InTimeText(wording));
    List<Graph> graphs =
        telling.charts().stream()
            .map(each -> Graph.of(each.drawing(), each.heading(), wording))
            .toList();
    return new MotionsView(telling.rows(), graphs);
  }

  /** The charts themselves. */
  static List<Drawing> drawings(Job job, TimeFigures figures, Wording wording) {
    return new Telling(job, figures, new InTimeText(wording))
        .charts().stream().map(FitCharts.Chart::drawing).toList();
  }

  private record Telling(Job job, TimeFigures behaviour, InTimeText text) {

    List<Row> rows() {
      List<Row> rows = new ArrayList<>();
      behaviour.cases().forEach(each -> rows.add(row("opening", each, each.opening())));
      behaviour.cases().forEach(each -> rows.add(row("failing", each, each.failing())));
      return rows;
    }

    private Row row(String what, Case each, Motion motion) {
      Wording wording = text.wording();
      return new Row(
          wording.text("time." + what),
          CornerText.of(each.corner(), wording),
          wording.text("time.end." + motion.end().name().toLowerCase(Locale.ROOT)),
          text.seconds(motion.endTime()),
          text.speed(Math.abs(motion.endSpeed()) * behaviour.hand()),
          text.joules(motion.stopEnergy()),
          text.newtons(motion.peakLoad()),
          text.celsius(motion.hottest()));
    }

    List<FitCharts.Chart> charts() {
      List<FitCharts.Chart> charts = new ArrayList<>();
      add(charts, "opening", Case::opening);
      if (behaviour.cases().stream().anyMatch(each -> each.failing().moved())) {
        add(charts, "failing", Case::failing);
      }
      return charts;
    }

    private void add(List<FitCharts.Chart> charts, String what, Function<Case, Motion> motion) {
      Movement kind = job.mechanism().movement();
      Wording wording = text.wording();
      for (boolean speed : new boolean[] {false, true}) {
        charts.add(
            new FitCharts.Chart(
                wording.text("time." + what),
                MotionChart.of(what, behaviour.cases(), motion, speed, kind, wording)));
      }
    }
  }
}
