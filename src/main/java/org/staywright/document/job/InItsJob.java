package org.staywright.document.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.document.chart.FitCharts;
import org.staywright.document.sheet.Sheet;
import org.staywright.document.view.BesideText;
import org.staywright.document.view.MountTable;
import org.staywright.document.view.SideView;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Unit;
import org.staywright.wording.HandText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A spring where it hangs, on paper: what it does at worst and what acts along, where its mounts
 * are, its charts, and how that meets what is asked.
 */
final class InItsJob {

  private static final double CHART = 184;

  private final Job job;
  private final Fit fit;
  private final RodEnd rodEnd;
  private final Wording wording;

  /**
   * @param fit null where the part is out
   * @param wording in the words of the job's mechanism
   */
  InItsJob(Job job, Fit fit, RodEnd rodEnd, Wording wording) {
    this.job = job;
    this.fit = fit;
    this.rodEnd = rodEnd;
    this.wording = wording;
  }

  /**
   * All of it.
   *
   * @param view greatest height of the side view, pt
   */
  void fill(Sheet sheet, double view) {
    hung(sheet, view);
    List<FitCharts.Chart> charts = FitCharts.forPaper(job, fit, wording);
    chart(sheet, charts.get(0));
    sheet.heading(wording.text("document.requirements"));
    sheet.grid(new Asked(job, fit, wording).grid());
    charts.subList(1, charts.size()).forEach(chart -> chart(sheet, chart));
  }

  /** What it does and where its mounts are. */
  void hung(Sheet sheet, double view) {
    sheet.sentences(doing());
    double end = fit == null ? job.mechanism().end() : fit.outcome().end();
    MountTable mounts = new MountTable(job.mechanism(), end, wording);
    sheet.beside(
        SideView.forPaper(job, fit, wording),
        view,
        mounts.facts(rodEnd, job.beside()),
        mounts.about());
  }

  private static void chart(Sheet sheet, FitCharts.Chart chart) {
    sheet.heading(chart.heading());
    sheet.drawing(chart.drawing(), CHART);
  }

  private List<String> doing() {
    List<String> doing = new ArrayList<>();
    figures().ifPresent(figures -> doing.addAll(words(figures).headline()));
    BesideText orders = new BesideText(wording);
    for (Beside each : job.beside()) {
      String brief = PartText.in(wording).brief(each.part());
      doing.add(wording.text("document.job-sheet.beside", orders.counted(each), brief));
    }
    return doing;
  }

  /** How a spring is hung on; "" where nobody knows. */
  String hanging() {
    return figures().map(figures -> words(figures).hanging()).orElse("");
  }

  /** What a hand feels of it, where that is known. */
  private Optional<Figures> figures() {
    return Optional.ofNullable(fit).flatMap(Fit::figures);
  }

  private HandText words(Figures figures) {
    Unit way = Figure.OPENING_ANGLE.unit(job.mechanism().movement());
    return HandText.of(fit, figures, job.requirements(), way, wording);
  }
}
