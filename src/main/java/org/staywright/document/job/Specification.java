package org.staywright.document.job;

import org.staywright.caution.fit.Cautions;
import org.staywright.document.chart.ForceChart;
import org.staywright.document.order.OrderText;
import org.staywright.document.part.PartFigures;
import org.staywright.document.sheet.Remarks;
import org.staywright.document.sheet.Sheet;
import org.staywright.document.view.SpringOutline;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.ideal.Ideal.Advice;
import org.staywright.fit.job.Job;
import org.staywright.part.Part;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** What would have to be made for a job: for a maker to quote, beside what stock costs. */
public final class Specification {

  private static final double OUTLINE = 170;
  private static final double VIEW = 190;
  private static final double CURVES = 140;

  private final Job job;
  private final Ideal ideal;
  private final Fit made;
  private final Part part;
  private final Wording wording;

  private Specification(Job job, Ideal ideal, Wording wording) {
    this.job = job;
    this.ideal = ideal;
    this.made = ideal.made();
    this.part = made.part();
    this.wording = wording;
  }

  /**
   * @param ideal with a spring that could be made; where making it is no better, the sheet says so
   *     instead
   */
  public static byte[] pdf(Job job, Ideal ideal, Wording plain) {
    Wording wording = plain.about(job.mechanism().code());
    return ideal.advice() == Advice.MAKE
        ? new Specification(job, ideal, wording).print()
        : new StockInstead(job, ideal, wording).print();
  }

  private byte[] print() {
    String name = new OrderText(wording).name(job.name());
    Sheet.Cover cover =
        new Sheet.Cover(
            wording.text("ideal.sheet.title", name),
            wording,
            "specification " + name + made.count() + part.spring());
    return Sheet.print(cover, sheet -> fill(sheet, name));
  }

  private void fill(Sheet sheet, String name) {
    sheet.title(
        wording.text("ideal.sheet"),
        name,
        wording.text("ideal.sheet.sentence", made.count(), PartText.in(wording).specify(part)));
    sheet.drawing(SpringOutline.of(part, made.rodFitting(), made.tubeFitting(), wording), OUTLINE);
    sheet.heading(wording.text("ideal.sheet.made"));
    sheet.pairs(new PartFigures(part, wording).pairs());
    sheet.note(wording.text("ideal.sheet.like"));
    sheet.heading(wording.text("document.forces"));
    sheet.pairs(new PartFigures(part, wording).forces());
    sheet.drawing(ForceChart.flat(part, wording), CURVES);
    sheet.newPage();
    sheet.heading(wording.text("ideal.sheet.job"));
    new InItsJob(job, made, made.rodEndAt(), wording).fill(sheet, VIEW);
    sheet.heading(wording.text("ideal.sheet.stock"));
    sheet.grid(AtTheHand.grid(ideal, wording));
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(Remarks.of(Cautions.of(job, made), wording));
    sheet.note(wording.text("ideal.sheet.about"));
  }
}
