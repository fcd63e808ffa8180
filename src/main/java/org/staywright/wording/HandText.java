package org.staywright.wording;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_UP;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.Stay;
import org.staywright.unit.Unit;

/**
 * What a fit does where a hand moves the load, in sentences: each names the worst of all corners,
 * and where it is; no curve exceeds a number in them.
 */
public final class HandText {

  private final Fit fit;
  private final Figures has;
  private final Requirements asked;
  private final Unit way;
  private final Wording wording;

  private HandText(Fit fit, Figures has, Requirements asked, Unit way, Wording wording) {
    this.fit = fit;
    this.has = has;
    this.asked = asked;
    this.way = way;
    this.wording = wording;
  }

  /**
   * @param way that places on the way are told in
   * @param wording in the words of the job's mechanism
   */
  public static HandText of(Fit fit, Figures has, Requirements asked, Unit way, Wording wording) {
    return new HandText(fit, has, asked, way, wording);
  }

  /** The verdict: what the hand has to do, what it does open, and shut where that is asked. */
  public List<String> headline() {
    List<String> said = new ArrayList<>();
    said.add(hand());
    said.add(open());
    if (asked.asks(Criterion.STAYS_SHUT)) {
      said.add(shut());
    }
    return said;
  }

  /** What in it is weak enough to be told in a list, in a few words each. */
  public List<String> marks() {
    List<String> marks = new ArrayList<>();
    Figures.Hold hold = has.hold();
    double open = hold.open().value();
    switch (Stay.open(hold)) {
      case LEAVES -> marks.add(wording.text("fit.mark.leaves", most(-open, 0)));
      case BARELY -> marks.add(wording.text("fit.mark.barely-held", least(open, 1)));
      case STAYS -> {}
    }
    if (asked.asks(Criterion.STAYS_SHUT) && Stay.shut(hold) == Stay.BARELY) {
      marks.add(wording.text("fit.mark.barely-shut", least(-hold.latchPush(), 1)));
    }
    return marks;
  }

  /** What to know besides: one spring failed, and whether and how the springs can be hung on. */
  public List<String> besides() {
    return Stream.of(oneFailed(), hanging()).filter(said -> !said.isEmpty()).toList();
  }

  private String oneFailed() {
    Figures.OneFailed left = has.oneFailed();
    return left.hold() < 0
        ? wording.text("fit.failed.leaves", most(-left.hold(), 0), most(left.hand(), 0))
        : wording.text("fit.failed.stays", least(left.hold(), 0), most(left.hand(), 0));
  }

  /** Whether a spring hangs on freely with the load at its open stop, and how; "" for no matter. */
  public String hanging() {
    Figures.Hanging hung = has.hanging();
    if (hung.lift() != null && hung.lift() == 0) {
      return wording.text("fit.hang.free");
    }
    if (hung.press() == 0) {
      return "";
    }
    boolean pushes = fit.part().spring().sense() > 0;
    boolean frees = hung.lift() != null;
    double sought = Figures.Hanging.sought(way == Unit.DEGREE);
    return wording.text(
        frees ? "fit.hang.lift" : "fit.hang.never",
        most(hung.press(), 0),
        wording.text(pushes ? "fit.hang.press" : "fit.hang.pull"),
        frees ? place(hung.lift(), CEILING) : place(sought, HALF_UP));
  }

  /** The greater of both ways with its place and corner, then the other. */
  private String hand() {
    Extreme open = has.hand().openWorst();
    Extreme close = has.hand().closeWorst();
    boolean opening = open.value() >= close.value();
    Extreme most = opening ? open : close;
    String number = fit.part().number();
    String springs =
        wording.text(
            number.isEmpty() ? "fit.says.springs.made" : "fit.says.springs",
            fit.count(),
            wording.quantity(fit.part().spring().force(), NEWTON, 0),
            number);
    String worst =
        wording.text(
            "fit.says.at",
            way(opening, most),
            place(most.travel(), HALF_UP),
            CornerText.of(most.corner(), wording));
    return wording.text("fit.says.hand", springs, worst, way(!opening, opening ? close : open));
  }

  private String way(boolean opening, Extreme most) {
    if (most.value() <= 0) {
      return wording.text(opening ? "fit.says.open.itself" : "fit.says.close.itself");
    }
    return wording.text(
        opening ? "fit.says.open.most" : "fit.says.close.most", most(most.value(), 0));
  }

  private String open() {
    Figures.Hold hold = has.hold();
    double open = hold.open().value();
    String corner = CornerText.of(hold.open().corner(), wording);
    return switch (Stay.open(hold)) {
      case LEAVES -> wording.text("fit.says.leaves", most(-open, 0), corner);
      case BARELY -> wording.text("fit.says.barely-held", least(open, 1), corner);
      case STAYS ->
          wording.text(
              hold.ratio() == null ? "fit.says.rests" : "fit.says.stays", least(open, 0), corner);
    };
  }

  private String shut() {
    Figures.Hold hold = has.hold();
    double shut = -hold.latchPush();
    String corner = CornerText.of(hold.closedLeast().corner(), wording);
    return switch (Stay.shut(hold)) {
      case LEAVES -> wording.text("fit.says.opens-itself", most(-shut, 0), corner);
      case BARELY -> wording.text("fit.says.barely-shut", least(shut, 1), corner);
      case STAYS -> wording.text("fit.says.stays-shut", least(shut, 0), corner);
    };
  }

  private String place(double travel, RoundingMode rounding) {
    return wording.quantity(travel, way, 0, rounding);
  }

  private String most(double force, int decimals) {
    return wording.quantity(force, NEWTON, decimals, CEILING);
  }

  private String least(double force, int decimals) {
    return wording.quantity(force, NEWTON, decimals, FLOOR);
  }
}
