package org.staywright.web;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.METRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;

import org.staywright.wording.Wording;

/** Figures of motions and chances as pages write them. */
record InTimeText(Wording wording) {

  Labelled figure(String name, String value) {
    return new Labelled(wording.text("page.time.figure." + name), value);
  }

  String newtons(double force) {
    return wording.quantity(force, NEWTON, 0);
  }

  String speed(double metresPerSecond) {
    return wording.quantity(metresPerSecond, METRE_PER_SECOND, 2);
  }

  String joules(double energy) {
    return wording.quantity(energy, JOULE, 1);
  }

  String celsius(double kelvin) {
    return wording.quantity(kelvin, CELSIUS, 0);
  }

  String seconds(double seconds) {
    return Double.isInfinite(seconds)
        ? wording.text("page.time.never")
        : wording.number(seconds, 2) + "\u00a0s";
  }

  String percent(double share) {
    return wording.number(100 * share, 1) + "\u00a0%";
  }

  String years(double years) {
    return Double.isInfinite(years)
        ? wording.text("page.time.never")
        : wording.text("page.time.years-of", wording.number(years, 1));
  }
}
