package org.staywright.web.bench;

import java.util.List;
import java.util.Locale;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Term.Sense;
import org.staywright.unit.Unit;
import org.staywright.wording.FigureText;
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
    return Criteria.kept(job, fit).stream().map(kept -> of(job, kept, wording)).toList();
  }

  private static Bar of(Job job, Kept kept, Wording wording) {
    FigureText text = FigureText.in(wording);
    Unit unit = kept.criterion().unit(job.mechanism().movement());
    double limit = kept.needed();
    double full = limit > 0 ? limit / SHARE : 1;
    boolean most = kept.criterion().sense() == Sense.AT_MOST;
    double has = Double.isNaN(kept.has()) ? (most ? full : 0) : kept.has();
    return bar(
        text.label(kept.criterion()),
        wording.text("sideview.kept", text.has(kept, unit), text.asked(kept, unit)),
        kept.met(),
        has,
        limit,
        full,
        most ? 0 : full);
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
