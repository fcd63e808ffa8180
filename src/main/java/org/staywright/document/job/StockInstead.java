package org.staywright.document.job;

import org.staywright.caution.fit.Cautions;
import org.staywright.document.order.OrderText;
import org.staywright.document.sheet.Remarks;
import org.staywright.document.sheet.Sheet;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.ideal.Ideal.Advice;
import org.staywright.fit.job.Job;
import org.staywright.unit.Unit;
import org.staywright.wording.BareText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * In place of a specification, where stock does as well or no spring is needed: nothing to make.
 */
final class StockInstead {

  private static final double VIEW = 194;

  private final Job job;
  private final Ideal ideal;
  private final Wording wording;

  /**
   * @param wording in the words of the job's mechanism
   */
  StockInstead(Job job, Ideal ideal, Wording wording) {
    this.job = job;
    this.ideal = ideal;
    this.wording = wording;
  }

  byte[] print() {
    String name = new OrderText(wording).name(job.name());
    Sheet.Cover cover =
        new Sheet.Cover(
            wording.text("ideal.instead.title", name), wording, "stock instead " + name + ideal);
    return Sheet.print(cover, sheet -> fill(sheet, name));
  }

  private void fill(Sheet sheet, String name) {
    sheet.title(wording.text("ideal.instead"), name, sentence());
    Fit stock = ideal.advice() == Advice.TAKE_STOCK ? ideal.stock() : null;
    if (stock != null) {
      new InItsJob(job, stock, stock.rodEndAt(), wording).fill(sheet, VIEW);
    }
    sheet.heading(wording.text("ideal.sheet.stock"));
    sheet.grid(AtTheHand.grid(ideal, wording));
    if (stock != null) {
      sheet.heading(wording.text("document.cautions"));
      sheet.remarks(Remarks.of(Cautions.of(job, stock), wording));
    }
  }

  private String sentence() {
    if (ideal.advice() == Advice.TAKE_NONE) {
      Unit way = Figure.OPENING_ANGLE.unit(job.mechanism().movement());
      return BareText.of(ideal.bare(), way, wording).sentence();
    }
    Fit stock = ideal.stock();
    String key = stock.fits() ? "ideal.instead.take-stock" : "ideal.instead.nearest";
    String what =
        wording.text(
            key, stock.count(), stock.part().number(), PartText.in(wording).brief(stock.part()));
    return stock.fits() ? what + ' ' + why() : what;
  }

  /** What a spring made for it would be worth beside a stock part that fits. */
  private String why() {
    if (!ideal.made().fits()) {
      return wording.text("ideal.instead.made-misses");
    }
    if (ideal.costsRms() <= 0) {
      return wording.text("ideal.instead.gains-nothing");
    }
    String gain = wording.quantity(Ideal.LEAST_GAIN, Unit.NEWTON, 1);
    return wording.text("ideal.instead.gains-little", gain);
  }
}
