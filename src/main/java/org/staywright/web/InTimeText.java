package org.staywright.web;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.METRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;

import java.math.RoundingMode;
import org.staywright.wording.Wording;

/**
 * Figures of motions and chances as pages write them.
 *
 * @param rounding up for what is said to be the most, down for what is the least
 */
record InTimeText(Wording wording, RoundingMode rounding) {

  InTimeText(Wording wording) {
    this(wording, RoundingMode.HALF_UP);
  }

  /** For figures that nothing exceeds. */
  InTimeText most() {
    return new InTimeText(wording, RoundingMode.CEILING);
  }

  /** For figures that nothing falls short of. */
  InTimeText least() {
    return new InTimeText(wording, RoundingMode.FLOOR);
  }

  Labelled figure(String name, String value) {
    return new Labelled(wording.text("page.time.figure." + name), value);
  }

  String newtons(double force) {
    return wording.quantity(force, NEWTON, 0, rounding);
  }

  String speed(double metresPerSecond) {
    return wording.quantity(metresPerSecond, METRE_PER_SECOND, 2, rounding);
  }

  String joules(double energy) {
    return wording.quantity(energy, JOULE, 1, rounding);
  }

  String celsius(double kelvin) {
    return wording.quantity(kelvin, CELSIUS, 0, rounding);
  }

  String seconds(double seconds) {
    return Double.isInfinite(seconds)
        ? wording.text("page.time.never")
        : wording.number(seconds, 2, rounding) + "\u00a0s";
  }

  String percent(double share) {
    return wording.number(100 * share, 1, rounding) + "\u00a0%";
  }

  String years(double years) {
    return Double.isInfinite(years)
        ? wording.text("page.time.never")
        : wording.text("page.time.years-of", wording.number(years, 1, rounding));
  }
}
