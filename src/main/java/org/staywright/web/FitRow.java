package org.staywright.web;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.part.Fitting;
import org.staywright.part.Price;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;
import org.staywright.wording.FitText;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * One line of a ranking, in words.
 *
 * @param rank from 1
 * @param partNumber of the spring
 * @param count of equal springs
 * @param about the spring in a few figures
 * @param fittings it took, by kind and number
 * @param curve small, of the hand forces
 * @param hand opening and closing at most, N
 * @param hold hold ratio
 * @param reserves stroke left closed and open, mm
 * @param price of the set
 * @param lead time
 * @param blockers what keeps it from fitting, in words
 * @param cleared what would make it fit, in words, "" where that was not solved
 */
public record FitRow(
    int rank,
    String partNumber,
    int count,
    String about,
    String fittings,
    RawString curve,
    String hand,
    String hold,
    String reserves,
    String price,
    String lead,
    List<String> blockers,
    String cleared) {

  static FitRow of(int rank, Job job, Fit fit, Wording wording) {
    return of(rank, job, fit, "", wording);
  }

  static FitRow of(int rank, Job job, Fit fit, String cleared, Wording wording) {
    Figures figures = fit.figures();
    return new FitRow(
        rank,
        fit.part().number(),
        fit.count(),
        about(fit.part().spring(), wording),
        fittings(fit, wording),
        Pictures.sparkline(job, fit, wording),
        pair(figures.handOpenMax(), figures.handCloseMax(), NEWTON, wording),
        figures.holdRatioOpen() == null ? "–" : wording.number(figures.holdRatioOpen(), 2),
        pair(figures.compressedReserve(), figures.extendedReserve(), MILLIMETRE, wording),
        price(fit, wording),
        lead(fit.leadTimeDays(), wording),
        fit.blockedBy().stream()
            .map(
                blocker ->
                    FitText.in(wording)
                        .blocker(blocker, blocker.code().unit(job.mechanism().kind())))
            .toList(),
        cleared);
  }

  /** Which part and how many: the value of a row's buttons. */
  public String pick() {
    return new Pick(count, partNumber, !blockers.isEmpty()).toString();
  }

  static String about(Spring spring, Wording wording) {
    return wording.text(
        "page.row.about",
        wording.quantity(spring.force(), NEWTON, 0),
        wording.quantity(spring.stroke(), MILLIMETRE, 0),
        wording.bare(spring.rodDiameter(), MILLIMETRE, 0),
        wording.bare(spring.tubeDiameter(), MILLIMETRE, 0));
  }

  private static String fittings(Fit fit, Wording wording) {
    String rod = fitting(fit.rodFitting(), wording);
    String tube = fitting(fit.tubeFitting(), wording);
    return rod.equals(tube)
        ? wording.text("page.row.fittings.same", rod)
        : wording.text("page.row.fittings", rod, tube);
  }

  static String fitting(Fitting fitting, Wording wording) {
    String type = PartText.in(wording).name("fitting", fitting.type());
    return wording.text("page.row.fitting", type, fitting.number());
  }

  static String price(Fit fit, Wording wording) {
    Price price = fit.part().offer().price();
    return fit.setPrice() == null || price == null
        ? "–"
        : wording.money(fit.setPrice(), price.currency());
  }

  static String lead(int days, Wording wording) {
    return days == 0 ? wording.text("page.lead.now") : wording.text("page.lead.days", days);
  }

  private static String pair(double one, double other, Unit unit, Wording wording) {
    return wording.bare(one, unit, 0) + " / " + wording.bare(other, unit, 0);
  }
}
