package org.staywright.web.fit;

import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Alike;
import org.staywright.part.Fitting;
import org.staywright.part.Price;
import org.staywright.spring.Spring;
import org.staywright.web.field.Labelled;
import org.staywright.web.query.Pick;
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
 * @param fittings it took, by kind and number, "" for a column
 * @param curve small
 * @param cells the figures that it is ranked by
 * @param price of the set
 * @param lead time
 * @param marks what of it is weak, in words
 * @param blockers what keeps it from fitting, in words
 * @param cleared what would make it fit, in words, "" where that was not solved
 * @param alike parts below it in the order that are nearly the same
 */
public record FitRow(
    int rank,
    String partNumber,
    int count,
    String about,
    String fittings,
    RawString curve,
    List<Labelled> cells,
    String price,
    String lead,
    List<String> marks,
    List<String> blockers,
    String cleared,
    List<AlikeRow> alike) {

  public static FitRow of(int rank, Job job, Fit fit, Wording wording) {
    return of(rank, job, fit, "", wording);
  }

  public static FitRow of(int rank, Job job, Fit fit, String cleared, Wording wording) {
    return of(rank, job, fit, cleared, List.of(), wording);
  }

  public static FitRow of(Job job, Alike group, Wording wording) {
    List<AlikeRow> alike =
        group.others().stream().map(other -> AlikeRow.of(other, wording)).toList();
    return of(group.rank(), job, group.fit(), "", alike, wording);
  }

  private static FitRow of(
      int rank, Job job, Fit fit, String cleared, List<AlikeRow> alike, Wording wording) {
    FitWords words = FitWords.of(job, fit, wording);
    return new FitRow(
        rank,
        fit.part().number(),
        fit.count(),
        about(fit.part().spring(), wording),
        fittings(fit, wording),
        words.curve(),
        words.cells(),
        price(fit, wording),
        lead(fit.leadTimeDays(), wording),
        words.marks(),
        fit.blockedBy().stream()
            .map(blocker -> FitText.in(wording).blocker(blocker, blocker.unit(job.mechanism())))
            .toList(),
        cleared,
        alike);
  }

  /** The foremost figures, for a glance. */
  public List<Labelled> glance() {
    return cells.subList(0, 2);
  }

  /** Which part and how many: the value of a row's buttons. */
  public String pick() {
    return new Pick(count, partNumber, !blockers.isEmpty()).toString();
  }

  static String about(Spring spring, Wording wording) {
    return wording.text(
        "row.about",
        wording.quantity(spring.force(), NEWTON, 0),
        wording.quantity(spring.stroke(), MILLIMETRE, 0),
        wording.bare(spring.rodDiameter(), MILLIMETRE, 0),
        wording.bare(spring.tubeDiameter(), MILLIMETRE, 0));
  }

  private static String fittings(Fit fit, Wording wording) {
    if (fit.rodFitting() == null) {
      return "";
    }
    String rod = fitting(fit.rodFitting(), wording);
    String tube = fitting(fit.tubeFitting(), wording);
    return rod.equals(tube)
        ? wording.text("row.fittings.same", rod)
        : wording.text("row.fittings", rod, tube);
  }

  public static String fitting(Fitting fitting, Wording wording) {
    String type = PartText.in(wording).name("fitting", fitting.type());
    return wording.text("row.fitting", type, fitting.number());
  }

  public static String price(Fit fit, Wording wording) {
    Price price = fit.part().offer().price();
    return fit.setPrice() == null || price == null
        ? "–"
        : wording.money(fit.setPrice(), price.currency());
  }

  public static String lead(int days, Wording wording) {
    return days == 0 ? wording.text("page.lead.now") : wording.text("page.lead.days", days);
  }
}
