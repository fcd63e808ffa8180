package org.staywright.fit;

import org.staywright.fit.Job.OpenStop;
import org.staywright.mechanism.Travel;
import org.staywright.part.Part;

/** Works out the figures of one part on one travel. */
final class Figuring {

  private Figuring() {}

  /** All but the strength. */
  static Figures slow(
      Job job, Travel travel, Part part, int count, double compressed, double extended) {
    return of(job, travel, part, count, compressed, extended, 0, null);
  }

  /**
   * @param peak null where strength is not asked for
   */
  static Figures of(
      Job job,
      Travel travel,
      Part part,
      int count,
      double compressed,
      double extended,
      double tubeFitting,
      Peak peak) {
    HandForces nominal = HandForces.of(job, travel, part, count, extended, Load.NOMINAL);
    HandForces weak = HandForces.of(job, travel, part, count, extended, Load.WEAK);
    HandForces strong = HandForces.of(job, travel, part, count, extended, Load.STRONG);
    int end = travel.last();
    double shortest = travel.shortest();
    return new Figures(
        travel.q()[end],
        travel.length()[0],
        travel.length()[end],
        shortest,
        travel.longest(),
        compressed,
        extended,
        greatest(nominal.open()),
        greatest(nominal.close()),
        rms(nominal),
        greatest(weak.open()),
        greatest(strong.close()),
        holdRatio(travel, weak),
        lastRun(travel, nominal.open(), -1),
        lastRun(travel, nominal.close(), 1),
        -nominal.moment()[0],
        -strong.moment()[0],
        peak == null ? Double.NaN : peak.pressure(),
        peak == null ? Double.NaN : peak.load(),
        stopLoad(job, travel, count),
        peak == null ? Double.NaN : peak.bucklingFactor(travel, tubeFitting),
        swing(job, shortest),
        lastRun(travel, weak.open(), -1),
        staysPut(job.requirements().behaviour(), travel, nominal),
        strong.moment()[0] / travel.hand(),
        overCentre(travel, part.spring().sense()));
  }

  /** Friction less imbalance at the worst place of the stretch; null where none is asked. */
  private static Double staysPut(Behaviour asked, Travel travel, HandForces nominal) {
    if (!asked.staysPut()) {
      return null;
    }
    Stretch stretch = Stretch.of(travel, asked.staysPutFrom(), asked.staysPutTo());
    double least = Double.POSITIVE_INFINITY;
    for (int i = stretch.first(); i <= stretch.last(); i++) {
      least = Math.min(least, Math.min(nominal.open()[i], nominal.close()[i]));
    }
    return least;
  }

  /**
   * The first q where the spring opens, if it presses shut at the start; else null.
   *
   * @param sense of the spring, +1 where it pushes
   */
  static Double overCentre(Travel travel, int sense) {
    int i = 0;
    while (i <= travel.last() && sense * travel.lever()[i] <= 0) {
      i++;
    }
    return i == 0 || i > travel.last() || travel.lever()[0] == 0 ? null : travel.q()[i];
  }

  /** Angle out of the side view that the end fittings give way to, rad. */
  static double swing(Job job, double shortest) {
    return Math.asin(Math.min(1, job.mechanism().lateralOffset() / shortest));
  }

  private static double greatest(double[] values) {
    double most = values[0];
    for (double value : values) {
      most = Math.max(most, value);
    }
    return most;
  }

  private static double rms(HandForces hand) {
    double sum = 0;
    for (int i = 0; i < hand.open().length; i++) {
      sum += hand.open()[i] * hand.open()[i] + hand.close()[i] * hand.close()[i];
    }
    return Math.sqrt(sum / (2 * hand.open().length));
  }

  /** n·F_gas·L′/|Q| at the open end, null where gravity does not close there. */
  private static Double holdRatio(Travel travel, HandForces weak) {
    double gravity = Load.WEAK.load(travel)[travel.last()];
    return gravity < 0 ? (weak.moment()[travel.last()] - gravity) / -gravity : null;
  }

  /**
   * The first q from which the values keep a sign all the way to the end, null if the end has not.
   */
  private static Double lastRun(Travel travel, double[] values, int sign) {
    int from = values.length;
    while (from > 0 && sign * values[from - 1] > 0) {
      from--;
    }
    return from == values.length ? null : travel.q()[from];
  }

  /**
   * With the spring as the stop, the pull on each mount while the hand still pushes at its limit.
   */
  static double stopLoad(Job job, Travel travel, int count) {
    double lever = travel.lever()[travel.last()];
    if (job.requirements().openStop() != OpenStop.SPRING_STOP || lever <= 0) {
      return 0;
    }
    double gravity = Math.max(travel.heavy()[travel.last()], travel.light()[travel.last()]);
    double hand = job.requirements().handOpenLimit() * travel.hand();
    return Math.max(0, (gravity + hand) / (count * lever));
  }
}
