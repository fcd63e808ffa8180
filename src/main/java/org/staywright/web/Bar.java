package org.staywright.web;

import static org.staywright.fit.Blocker.Code.LATCH_PUSH;
import static org.staywright.fit.Blocker.Code.OVER_CENTRE;
import static org.staywright.fit.Blocker.Code.RISES;
import static org.staywright.fit.Blocker.Code.STOP_SPEED;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.fit.Behaviour;
import org.staywright.fit.Blocker;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.Opening;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * A requirement beside what a spring does about it.
 *
 * @param label in words
 * @param text both numbers, in words
 * @param kept whether it meets the requirement
 * @param value of the spring, for a bar
 * @param limit at which the requirement is just met
 * @param full length of the bar
 * @param best end of the bar that is to be reached
 */
public record Bar(
    String label, String text, boolean kept, String value, String limit, String full, String best) {

  /** What the limit is of the bar's length. */
  private static final double SHARE = 0.6;

  static List<Bar> of(Job job, Fit fit, Wording wording) {
    return fit.outcome() instanceof Figures figures
        ? new Telling(job, fit, wording).bars(figures)
        : List.of();
  }

  /** Bars in the making. */
  private record Telling(Job job, Fit fit, Wording wording) {

    List<Bar> bars(Figures figures) {
      Job.Requirements asked = job.requirements();
      List<Bar> bars = new ArrayList<>();
      bars.add(most("hand-open-weak", figures.handOpenMaxWeak(), asked.handOpenLimit(), NEWTON));
      bars.add(
          most("hand-close-strong", figures.handCloseMaxStrong(), asked.handCloseLimit(), NEWTON));
      if (figures.holdRatioOpen() != null) {
        bars.add(least("hold-ratio", figures.holdRatioOpen(), asked.minHoldRatio(), null));
      }
      bars.add(
          least(
              "compressed-reserve",
              figures.compressedReserve(),
              asked.compressedReserve(),
              MILLIMETRE));
      if (asked.openStop() == Job.OpenStop.FLAP_STOP) {
        bars.add(
            least(
                "extended-reserve",
                figures.extendedReserve(),
                asked.extendedReserve(),
                MILLIMETRE));
      }
      behaviour(bars, asked.behaviour(), figures);
      for (Opening.Kept kept : Opening.kept(job, fit)) {
        String label = wording.text("page.time.figure." + kept.code().code());
        int decimals = kept.code() == STOP_SPEED ? 0 : 1;
        bars.add(most(label, kept.has(), kept.most(), unit(kept.code()), decimals));
      }
      return bars;
    }

    private void behaviour(List<Bar> bars, Behaviour asked, Figures figures) {
      stated(bars, "self-opens-weak", figures.selfOpensFromWeak(), asked.risesFrom(), RISES);
      stated(bars, "latch-push", figures.latchPush(), asked.maxLatchPush(), LATCH_PUSH);
      stated(bars, "over-centre", figures.overCentre(), asked.overCentreBy(), OVER_CENTRE);
      if (asked.staysPut()) {
        bars.add(least("stays-put", figures.staysPut(), 0, NEWTON));
      }
    }

    /**
     * @param has null where it never does
     * @param limit null where it is not asked
     */
    private void stated(List<Bar> bars, String name, Double has, Double limit, Blocker.Code code) {
      if (limit != null) {
        bars.add(most(name, has == null ? Double.POSITIVE_INFINITY : has, limit, unit(code)));
      }
    }

    private Unit unit(Blocker.Code code) {
      return code.unit(job.mechanism().kind());
    }

    private Bar most(String name, double has, double limit, Unit unit) {
      return most(wording.text("fit.figure." + name), has, limit, unit, 0);
    }

    private Bar most(String label, double has, double limit, Unit unit, int decimals) {
      double full = limit > 0 ? limit / SHARE : 1;
      String text =
          wording.text(
              "sideview.at-most", shown(has, unit, decimals), shown(limit, unit, decimals));
      return bar(label, text, has <= limit, has, limit, full, 0);
    }

    private Bar least(String name, double has, double limit, Unit unit) {
      double full = limit > 0 ? limit / SHARE : 1;
      String text = wording.text("sideview.at-least", shown(has, unit, 0), shown(limit, unit, 0));
      return bar(wording.text("fit.figure." + name), text, has >= limit, has, limit, full, full);
    }

    private String shown(double si, Unit unit, int decimals) {
      if (Double.isInfinite(si)) {
        return wording.text("page.time.never");
      }
      return unit == null ? wording.number(si, 2) : wording.quantity(si, unit, decimals);
    }
  }

  private static Bar bar(
      String label, String text, boolean kept, double has, double limit, double full, double best) {
    double value = Math.max(0, Math.min(full, has));
    return new Bar(label, text, kept, plain(value), plain(limit), plain(full), plain(best));
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.5f", number);
  }
}
