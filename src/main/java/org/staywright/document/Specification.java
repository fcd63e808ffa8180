package org.staywright.document;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.Cautions;
import org.staywright.fit.Fit;
import org.staywright.fit.Ideal;
import org.staywright.fit.Job;
import org.staywright.part.Part;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/** What would have to be made for a job: for a maker to quote, beside what stock costs. */
public final class Specification {

  private static final double OUTLINE = 150;
  private static final double VIEW = 165;
  private static final double CHART = 145;
  private static final double CURVES = 122;

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
    this.wording = wording.about(job.mechanism().code());
  }

  /**
   * @param ideal with a spring that could be made
   */
  public static byte[] pdf(Job job, Ideal ideal, Wording wording) {
    return new Specification(job, ideal, wording).print();
  }

  private byte[] print() {
    String name = new OrderText(wording).name(job.name());
    Sheet.Cover cover =
        new Sheet.Cover(
            wording.text("ideal.sheet.title", name),
            wording.locale(),
            wording.text("document.footer"),
            null,
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
    sheet.drawing(ForceChart.forPaper(part, wording), CURVES);
    sheet.newPage();
    MountTable mounts = new MountTable(job.mechanism(), made.outcome().end(), wording);
    sheet.beside(
        SideView.forPaper(job, made, wording),
        VIEW,
        wording.text("document.mounts"),
        mounts.pairs(made.rodEndAt(), job.beside()),
        mounts.about());
    for (FitCharts.Chart chart : FitCharts.forPaper(job, made, wording)) {
      sheet.heading(chart.heading());
      sheet.drawing(chart.drawing(), CHART);
    }
    sheet.heading(wording.text("document.requirements"));
    sheet.grid(new Asked(job, made, wording).grid());
    sheet.heading(wording.text("ideal.sheet.stock"));
    sheet.pairs(beside());
    sheet.heading(wording.text("document.cautions"));
    sheet.remarks(Remarks.of(Cautions.of(job, made), wording));
    sheet.note(wording.text("ideal.sheet.about"));
  }

  /** What the hand does with it, and with the best of the range. */
  private List<String[]> beside() {
    List<String[]> pairs = new ArrayList<>();
    Fit stock = ideal.stock();
    pairs.add(pair("ideal.sheet.rms", newtons(made.figures().hand().rms())));
    pairs.add(pair("ideal.sheet.most", newtons(made.figures().hand().worst())));
    pairs.add(
        pair(
            "ideal.sheet.length",
            wording.quantity(made.figures().lengths().extended(), MILLIMETRE, 1)));
    if (stock != null) {
      pairs.add(pair("ideal.sheet.stock-part", stock.count() + " × " + stock.part().number()));
      pairs.add(pair("ideal.sheet.stock-rms", newtons(stock.figures().hand().rms())));
      pairs.add(pair("ideal.sheet.stock-most", newtons(stock.figures().hand().worst())));
    }
    return pairs;
  }

  private String[] pair(String key, String value) {
    return new String[] {wording.text(key), value};
  }

  private String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }
}
