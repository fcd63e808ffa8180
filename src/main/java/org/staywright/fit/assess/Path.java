package org.staywright.fit.assess;

import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.Travel;

/**
 * The travel that a spring of some extended length leaves: the mechanism's own, or shorter or
 * longer where the spring's full extension is the stop.
 *
 * @param travel sampled
 * @param alongside what acts along on it
 * @param rejection where the spring would stop it far from the wanted end, else null
 * @param blocker where it would stop it a little off, else null
 */
public record Path(Travel travel, Alongside alongside, Rejection rejection, Blocker blocker) {

  /** A length that misses by more than this is no near miss, m. */
  public static final double FAR = 15e-3;

  /** Why a spring of these lengths, end fittings included, is out; null where it is not. */
  public Rejection misfit(Requirements asked, double compressed, double extended) {
    if (asked.compressedReserve() - (travel.shortest() - compressed) > FAR) {
      return Rejection.TOO_LONG_CLOSED;
    }
    if (rejection != null) {
      return rejection;
    }
    boolean flapStops = asked.openStop() == Job.OpenStop.FLAP_STOP;
    if (flapStops && asked.extendedReserve() - (extended - travel.longest()) > FAR) {
      return Rejection.TOO_SHORT_OPEN;
    }
    return null;
  }
}
