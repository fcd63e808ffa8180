package org.staywright.fit.assess;

import java.util.Optional;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.gas.BeyondEquation;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.Spring;

/**
 * The hardest stroke of the service: the strongest spring, hot, slammed over the lengths used
 * against its force.
 *
 * @param spring that is slammed
 * @param stroke fast limit
 * @param hardest length at its end: the shortest used where it pushes, the longest where it pulls
 * @param extended length of spring and fittings at full extension, m
 * @param friction of the rod, N
 */
record Peak(Spring spring, ForceLaw.Fast stroke, double hardest, double extended, double friction) {

  /** Empty where the gas would be squeezed beyond what can be computed. */
  static Optional<Peak> of(Job job, Travel travel, Part part, double extended) {
    double kelvin = SpringState.STRONG.kelvin(job.conditions());
    boolean pushes = part.spring().sense() > 0;
    double easiest = pushes ? travel.longest() : travel.shortest();
    double hardest = pushes ? travel.shortest() : travel.longest();
    try {
      ForceLaw law = SpringState.STRONG.law(part, job.conditions());
      ForceLaw.Fast stroke = law.fast(extended - easiest, extended - hardest, kelvin);
      double friction = part.spring().friction(kelvin);
      return Optional.of(new Peak(part.spring(), stroke, hardest, extended, friction));
    } catch (BeyondEquation beyond) {
      return Optional.empty();
    }
  }

  /** Highest absolute pressure, Pa. */
  double pressure() {
    return stroke.pressure(extended - hardest);
  }

  /** Greatest load on the mounts, N. */
  double load() {
    return load(hardest);
  }

  private double load(double length) {
    return Math.abs(stroke.force(extended - length)) + friction;
  }

  /** Least ratio of buckling load to this stroke's force over the travel. */
  double bucklingFactor(Travel travel, double tubeFitting) {
    double least = Double.POSITIVE_INFINITY;
    for (double length : travel.length()) {
      double critical = spring.criticalLoad(length, tubeFitting);
      least = Math.min(least, critical / load(length));
    }
    return least;
  }
}
