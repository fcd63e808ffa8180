package org.staywright.web.fit;

import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.GasBeyond;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/** What to say where the gas leaves its equation of state, and the mend by what was asked for. */
public final class BeyondWords {

  private BeyondWords() {}

  /**
   * @param asked what for: the last word of its address
   */
  public static String of(GasBeyond beyond, String asked, Wording wording) {
    String symbol = beyond.bound().unit();
    String value =
        Unit.of(symbol)
            .map(unit -> wording.quantity(unit.si(beyond.value()), unit, 1))
            .orElseGet(() -> wording.number(beyond.value(), 0) + "\u00a0" + symbol);
    String mend = "problem.gas.mend." + asked;
    return wording.text(
        "problem.gas",
        wording.text("problem.gas." + AnswerJson.code(beyond.quantity())),
        value,
        wording.bound(beyond.bound()),
        wording.text(wording.knows(mend) ? mend : "problem.gas.mend"));
  }
}
