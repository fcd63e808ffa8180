package org.staywright.document;

import static org.staywright.unit.Unit.NEWTON;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.Criterion;
import org.staywright.fit.Extreme;
import org.staywright.fit.Figure;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Stay;
import org.staywright.unit.Unit;
import org.staywright.wording.CornerText;
import org.staywright.wording.Wording;

/** What a fit does where a hand moves the load, in sentences that name their worst case. */
final class FitSentences {

  private final Job job;
  private final Figures has;
  private final Wording wording;
  private final Unit way;

  FitSentences(Job job, Fit fit, Wording wording) {
    this.job = job;
    this.has = fit.figures();
    this.wording = wording;
    this.way = Figure.OPENING_ANGLE.unit(job.mechanism().kind());
  }

  List<Sheet.Remark> all() {
    List<Sheet.Remark> all = new ArrayList<>();
    all.add(remark("hand", Paper.MILD, hand()));
    all.add(stays("open", Stay.open(has.hold()), has.hold().open(), has.hold().open().value()));
    if (job.requirements().asks(Criterion.STAYS_SHUT)) {
      double newtons = -has.hold().latchPush();
      all.add(stays("shut", Stay.shut(has.hold()), has.hold().closedLeast(), newtons));
    }
    return all;
  }

  private String hand() {
    Figures.Hand hand = has.hand();
    return wording.text(
        "document.does.hand.is",
        newtons(hand.openWorst().value()),
        at(hand.openWorst()),
        corner(hand.openWorst()),
        newtons(hand.closeWorst().value()),
        at(hand.closeWorst()),
        corner(hand.closeWorst()),
        newtons(hand.open()),
        newtons(hand.close()));
  }

  /**
   * @param newtons at the handle in that corner
   */
  private Sheet.Remark stays(String where, Stay stay, Extreme worst, double newtons) {
    int decimals = stay == Stay.BARELY ? 1 : 0;
    String sentence =
        wording.text(
            "document.does." + where + '.' + stay.code(),
            wording.quantity(Math.abs(newtons), NEWTON, decimals),
            corner(worst));
    Color colour =
        switch (stay) {
          case STAYS -> Paper.MILD;
          case BARELY -> Paper.HOT;
          case LEAVES -> Paper.STOP;
        };
    return remark(where, colour, sentence);
  }

  /** How a spring is hung on, the load at its open stop. */
  String hanging() {
    Figures.Hanging hanging = has.hanging();
    if (hanging.press() == 0) {
      return wording.text("document.mounting.5");
    }
    String press = newtons(hanging.press());
    return hanging.lift() == null
        ? wording.text("document.mounting.5.press", press)
        : wording.text("document.mounting.5.lift", press, past(hanging.lift()));
  }

  /** Rounded up, so that it is enough. */
  private String past(double lift) {
    return wording.quantity(way.si(Math.ceil(way.of(lift) - 1e-6)), way, 0);
  }

  private Sheet.Remark remark(String what, Color colour, String sentence) {
    return new Sheet.Remark(wording.text("document.does." + what), colour, sentence);
  }

  /** Below zero nothing is asked of the hand. */
  private String newtons(double force) {
    return wording.quantity(Math.max(0, force), NEWTON, 0);
  }

  private String at(Extreme worst) {
    return wording.quantity(worst.travel(), way, 0);
  }

  private String corner(Extreme worst) {
    return CornerText.of(worst.corner(), wording);
  }
}
