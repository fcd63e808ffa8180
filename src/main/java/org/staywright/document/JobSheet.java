package org.staywright.document;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.Cautions;
import org.staywright.fit.Beside;
import org.staywright.fit.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.job.Chosen;
import org.staywright.job.Misfit;
import org.staywright.job.OrderLine;
import org.staywright.job.PartsList;
import org.staywright.unit.Unit;
import org.staywright.wording.HandText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** What goes to the bench with the parts: where they go, what they must do, how they are fitted. */
public final class JobSheet {

  private static final int STEPS = 8;

  /** The step at which a spring is hung on. */
  private static final int HANGING = 5;

  /** Greatest heights, pt; lower below a mark. */
  private static final double VIEW = 194;

  private static final double LOW_VIEW = 180;
  private static final double CHART = 184;

  private final Chosen chosen;
  private final Job job;
  private final Fit fit;
  private final PartsList list;
  private final Wording wording;

  private JobSheet(Chosen chosen, PartsList list, Wording wording) {
    this.chosen = chosen;
    this.job = chosen.job();
    this.fit = chosen.fit();
    this.list = list;
    this.wording = wording.about(job.mechanism().code());
  }

  /**
   * @param chosen job and part
   * @param list of that job alone
   */
  public static byte[] pdf(Chosen chosen, PartsList list, Wording wording) {
    JobSheet sheet = new JobSheet(chosen, list, wording);
    return Sheet.print(new OrderTitle(list, wording).cover("job-sheet"), sheet::fill);
  }

  private void fill(Sheet sheet) {
    sheet.title(
        wording.text("document.job-sheet"),
        new OrderText(wording).name(job.name()),
        wording.text(
            "document.job-sheet.sentence",
            chosen.choice().count(),
            chosen.part().number(),
            PartText.in(wording).describe(chosen.part())));
    sheet.sentences(doing());
    double end = fit == null ? job.mechanism().end() : fit.outcome().end();
    MountTable mounts = new MountTable(job.mechanism(), end, wording);
    sheet.beside(
        SideView.forPaper(job, fit, wording),
        chosen.misfit() == null ? VIEW : LOW_VIEW,
        wording.text("document.mounts"),
        mounts.pairs(chosen.choice().rodEndAt(), job.beside()),
        mounts.about());
    if (fit == null) {
      Misfit misfit = chosen.misfit();
      String reasons = new OrderText(wording).reasons(misfit);
      sheet.note(wording.text("document.asked.no-figures", reasons));
    } else {
      List<FitCharts.Chart> charts = FitCharts.forPaper(job, fit, wording);
      chart(sheet, charts.get(0));
      sheet.heading(wording.text("document.requirements"));
      sheet.grid(new Asked(job, fit, wording).grid());
      charts.subList(1, charts.size()).forEach(chart -> chart(sheet, chart));
    }
    sheet.heading(wording.text("document.order-lines"));
    sheet.grid(lines());
    new OrderText(wording).unmatched(list).forEach(sheet::note);
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(
        Remarks.of(fit == null ? Cautions.of(chosen.part()) : Cautions.of(job, fit), wording));
    sheet.heading(wording.text("document.mounting"));
    sheet.steps(steps());
    sheet.heading(wording.text("document.signed"));
    sheet.grid(signed());
  }

  /** What it does at worst, and what acts along. */
  private List<String> doing() {
    List<String> doing = new ArrayList<>();
    if (moved()) {
      doing.addAll(words().headline());
    }
    for (Beside each : job.beside()) {
      doing.add(
          wording.text(
              "document.job-sheet.beside",
              each.count(),
              each.part().number(),
              new OrderText(wording).kind(each),
              PartText.in(wording).describe(each.part())));
    }
    return doing;
  }

  /** Whether it is known what a hand feels of it. */
  private boolean moved() {
    return fit != null && fit.outcome() instanceof Figures;
  }

  private HandText words() {
    Unit way = Figure.OPENING_ANGLE.unit(job.mechanism().kind());
    return HandText.of(fit, job.requirements(), way, wording);
  }

  private static void chart(Sheet sheet, FitCharts.Chart chart) {
    sheet.heading(chart.heading());
    sheet.drawing(chart.drawing(), CHART);
  }

  private Grid lines() {
    OrderText words = new OrderText(wording);
    Grid grid =
        new Grid(
            List.of(
                column("position", 4, false),
                column("part-number", 12, false),
                column("description", 72, false),
                column("quantity", 12, true)));
    int position = 1;
    for (OrderLine line : list.lines()) {
      grid.row(
          List.of(
              Integer.toString(position++),
              line.item().number(),
              words.describe(line.item()),
              wording.number(line.quantity(), 0)));
    }
    return grid;
  }

  private List<String> steps() {
    List<String> steps = new ArrayList<>();
    for (int i = 1; i <= STEPS; i++) {
      String hanging = i == HANGING && moved() ? words().hanging() + ' ' : "";
      steps.add(hanging + wording.text("document.mounting." + i));
    }
    return steps;
  }

  private Grid signed() {
    Grid grid =
        new Grid(
            List.of(
                new Grid.Head("", 16, false),
                new Grid.Head(wording.text("document.signed.name"), 34, false),
                new Grid.Head(wording.text("document.signed.date"), 18, false),
                new Grid.Head(wording.text("document.signed.signature"), 32, false)));
    for (String who : List.of("made", "fitted", "checked")) {
      grid.blanks(List.of(wording.text("document.signed." + who), "", "", ""), 19);
    }
    return grid;
  }

  private Grid.Head column(String name, float width, boolean number) {
    return new Grid.Head(wording.text("document.column." + name), width, number);
  }
}
