package org.staywright.document.job;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.order.OrderText;
import org.staywright.document.order.OrderTitle;
import org.staywright.document.sheet.Grid;
import org.staywright.document.sheet.Remarks;
import org.staywright.document.sheet.Sheet;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.job.Chosen;
import org.staywright.job.order.OrderLine;
import org.staywright.job.order.PartsList;
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

  private final Chosen chosen;
  private final Job job;
  private final Fit fit;
  private final PartsList list;
  private final Wording wording;
  private final InItsJob inItsJob;

  private JobSheet(Chosen chosen, PartsList list, Wording wording) {
    this.chosen = chosen;
    this.job = chosen.job();
    this.fit = chosen.fit();
    this.list = list;
    this.wording = wording.about(job.mechanism().code());
    this.inItsJob = new InItsJob(job, fit, chosen.choice().rodEndAt(), this.wording);
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
            PartText.in(wording).brief(chosen.part())));
    double view = chosen.misfit() == null ? VIEW : LOW_VIEW;
    if (fit == null) {
      inItsJob.hung(sheet, view);
      String reasons = new OrderText(wording).reasons(chosen.misfit());
      sheet.note(wording.text("document.asked.no-figures", reasons));
    } else {
      inItsJob.fill(sheet, view);
    }
    sheet.heading(wording.text("document.order-lines"));
    sheet.grid(lines());
    new OrderText(wording).unmatched(list).forEach(sheet::note);
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(
        Remarks.of(fit == null ? Cautions.of(chosen.part()) : Cautions.of(job, fit), wording));
    sheet.together(
        () -> {
          sheet.heading(wording.text("document.mounting"));
          sheet.steps(steps());
          sheet.heading(wording.text("document.signed"));
          sheet.grid(signed());
        });
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
      String hanging = i == HANGING ? inItsJob.hanging() : "";
      steps.add((hanging + ' ' + wording.text("document.mounting." + i)).strip());
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
      grid.blanks(List.of(wording.text("document.signed." + who), "", "", ""), 18);
    }
    return grid;
  }

  private Grid.Head column(String name, float width, boolean number) {
    return new Grid.Head(wording.text("document.column." + name), width, number);
  }
}
