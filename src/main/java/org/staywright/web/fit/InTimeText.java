package org.staywright.web.fit;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.METRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import org.staywright.web.field.Labelled;
import org.staywright.wording.Wording;

/**
 * Figures of motions and chances as pages write them.
 *
 * @param rounding up for what is said to be the most, down for what is the least
 */
public record InTimeText(Wording wording, RoundingMode rounding) {

  public InTimeText(Wording wording) {
    this(wording, RoundingMode.HALF_UP);
  }

  /** For figures that nothing exceeds. */
  InTimeText most() {
    return new InTimeText(wording, RoundingMode.CEILING);
  }

  /** For figures that nothing falls short of. */
  public InTimeText least() {
    return new InTimeText(wording, RoundingMode.FLOOR);
  }

  public Labelled figure(String name, String value) {
    return new Labelled(wording.text("time.figure." + name), value);
  }

  public String newtons(double force) {
    return wording.quantity(force, NEWTON, 0, rounding);
  }

  public String speed(double metresPerSecond) {
    return wording.quantity(metresPerSecond, METRE_PER_SECOND, 2, rounding);
  }

  public String joules(double energy) {
    return wording.quantity(energy, JOULE, 1, rounding);
  }

  public String celsius(double kelvin) {
    return wording.quantity(kelvin, CELSIUS, 0, rounding);
  }

  public String seconds(double seconds) {
    return Double.isInfinite(seconds)
        ? wording.text("time.never")
        : wording.number(seconds, 2, rounding) + "\u00a0s";
  }

  public String percent(double share) {
    return wording.number(100 * share, 1, rounding) + "\u00a0%";
  }

  public String years(double years) {
    return Double.isInfinite(years)
        ? wording.text("time.never")
        : wording.text("time.years-of", wording.number(years, 1, rounding));
  }
}
