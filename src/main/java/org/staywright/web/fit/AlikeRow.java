package org.staywright.web.fit;

import org.staywright.fit.assess.Fit;
import org.staywright.fit.rank.Alike;
import org.staywright.web.query.Pick;
import org.staywright.wording.PartText;
import org.staywright.wording.Wording;

/**
 * A part that is nearly the same as the one above it, in words.
 *
 * @param rank from 1 in the whole order
 * @param partNumber of the spring
 * @param count of equal springs
 * @param about the spring in the range's words, else in a few figures
 * @param finish of its surface
 * @param price of the set
 * @param lead time
 */
public record AlikeRow(
    int rank,
    String partNumber,
    int count,
    String about,
    String finish,
    String price,
    String lead) {

  static AlikeRow of(Alike alike, Wording wording) {
    Fit fit = alike.fit();
    return new AlikeRow(
        alike.rank(),
        fit.part().number(),
        fit.count(),
        fit.part().description() == null
            ? FitRow.about(fit.part().spring(), wording)
            : fit.part().description(),
        PartText.in(wording).name("finish", fit.part().finish()),
        FitRow.price(fit, wording),
        FitRow.lead(fit.leadTimeDays(), wording));
  }

  /** Which part and how many: the value of a row's buttons. */
  public String pick() {
    return new Pick(count, partNumber, false).toString();
  }
}
