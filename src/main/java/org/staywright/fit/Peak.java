package org.staywright.fit;

import java.util.Optional;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.SteppedColumn;
import org.staywright.unit.Refusal;

/**
 * The hardest stroke of the service: the strongest spring, hot, slammed from the longest to the
 * shortest length used.
 *
 * @param stroke fast limit
 * @param extended length of spring and fittings at full extension, m
 * @param friction of the rod, N
 */
record Peak(ChargedSpring.FastStroke stroke, double extended, double friction) {

  /** Empty where the gas would be squeezed beyond what can be computed. */
  static Optional<Peak> of(Job job, Travel travel, Part part, double extended) {
    double kelvin = Load.STRONG.kelvin(job.conditions());
    ChargedSpring spring = Load.STRONG.charged(part, 1);
    double from = extended - travel.longest();
    double to = extended - travel.shortest();
    if (spring.spring().gasVolume(to, kelvin) <= 0) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new Peak(spring.fast(from, to, kelvin), extended, spring.spring().friction(kelvin)));
    } catch (Refusal beyondTheEquationOfState) {
      return Optional.empty();
    }
  }

  double pressure(double length) {
    return stroke.pressure(extended - length);
  }

  /** Load on the mounts at a length, N. */
  double load(double length) {
    return stroke.force(extended - length) + friction;
  }

  /** Least ratio of buckling load to this stroke's force over the travel. */
  double bucklingFactor(Travel travel, double tubeFitting) {
    double least = Double.POSITIVE_INFINITY;
    for (double length : travel.length()) {
      double critical =
          SteppedColumn.of(stroke.spring().spring(), length, tubeFitting).criticalLoad();
      least = Math.min(least, critical / load(length));
    }
    return least;
  }
}
