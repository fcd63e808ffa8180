package org.staywright.web;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
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
    if (!(fit.outcome() instanceof Figures figures)) {
      return List.of();
    }
    Job.Requirements asked = job.requirements();
    List<Bar> bars = new ArrayList<>();
    bars.add(
        most("hand-open-weak", figures.handOpenMaxWeak(), asked.handOpenLimit(), NEWTON, wording));
    bars.add(
        most(
            "hand-close-strong",
            figures.handCloseMaxStrong(),
            asked.handCloseLimit(),
            NEWTON,
            wording));
    if (figures.holdRatioOpen() != null) {
      bars.add(least("hold-ratio", figures.holdRatioOpen(), asked.minHoldRatio(), null, wording));
    }
    bars.add(
        least(
            "compressed-reserve",
            figures.compressedReserve(),
            asked.compressedReserve(),
            MILLIMETRE,
            wording));
    if (asked.openStop() == Job.OpenStop.FLAP_STOP) {
      bars.add(
          least(
              "extended-reserve",
              figures.extendedReserve(),
              asked.extendedReserve(),
              MILLIMETRE,
              wording));
    }
    return bars;
  }

  private static Bar most(String name, double has, double limit, Unit unit, Wording wording) {
    return bar(name, "sideview.at-most", has, limit, has <= limit, 0, unit, wording);
  }

  private static Bar least(String name, double has, double limit, Unit unit, Wording wording) {
    double full = limit > 0 ? limit / SHARE : 1;
    return bar(name, "sideview.at-least", has, limit, has >= limit, full, unit, wording);
  }

  private static Bar bar(
      String name,
      String key,
      double has,
      double limit,
      boolean kept,
      double best,
      Unit unit,
      Wording wording) {
    double full = limit > 0 ? limit / SHARE : 1;
    return new Bar(
        wording.text("fit.figure." + name),
        wording.text(key, shown(has, unit, wording), shown(limit, unit, wording)),
        kept,
        plain(Math.max(0, Math.min(full, has))),
        plain(limit),
        plain(full),
        plain(best));
  }

  private static String shown(double si, Unit unit, Wording wording) {
    return unit == null ? wording.number(si, 2) : wording.quantity(si, unit, 0);
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.5f", number);
  }
}
