package org.staywright.fit;

import static org.staywright.fit.Blocker.Code.HAND_CLOSE;
import static org.staywright.fit.Blocker.Code.HAND_FORCE;
import static org.staywright.fit.Blocker.Code.HAND_OPEN;
import static org.staywright.fit.Blocker.Code.LATCH_PUSH;
import static org.staywright.fit.Blocker.Code.OVER_CENTRE;
import static org.staywright.fit.Blocker.Code.RISES;
import static org.staywright.fit.Blocker.Code.STAYS_PUT;

import java.util.ArrayList;
import java.util.List;
import org.staywright.fit.Job.OpenStop;
import org.staywright.mechanism.Travel;

/** The requirements that can be given way on, and by how much a part misses or keeps them. */
final class Requirement {

  /** Reserves are counted in these, m. */
  private static final double RESERVE_SCALE = 10e-3;

  private Requirement() {}

  static List<Blocker> missed(Job job, Figures figures) {
    Job.Requirements asked = job.requirements();
    List<Blocker> missed = new ArrayList<>();
    Behaviour behaviour = asked.behaviour();
    if (behaviour.oneHandLimit()) {
      most(HAND_FORCE, asked.maxHandForce(), figures.handForce(), missed);
    } else {
      most(HAND_OPEN, asked.handOpenLimit(), figures.handOpenMaxWeak(), missed);
      most(HAND_CLOSE, asked.handCloseLimit(), figures.handCloseMaxStrong(), missed);
    }
    if (figures.holdRatioOpen() != null && figures.holdRatioOpen() < asked.minHoldRatio()) {
      missed.add(
          new Blocker(Blocker.Code.HOLD_RATIO, asked.minHoldRatio(), figures.holdRatioOpen()));
    }
    if (figures.compressedReserve() < asked.compressedReserve()) {
      missed.add(
          new Blocker(
              Blocker.Code.COMPRESSED_RESERVE,
              asked.compressedReserve(),
              figures.compressedReserve()));
    }
    if (asked.openStop() == OpenStop.FLAP_STOP
        && figures.extendedReserve() < asked.extendedReserve()) {
      missed.add(
          new Blocker(
              Blocker.Code.EXTENDED_RESERVE, asked.extendedReserve(), figures.extendedReserve()));
    }
    if (asked.staysShut() && figures.closedHoldStrong() <= 0) {
      missed.add(new Blocker(Blocker.Code.STAYS_SHUT, 0, figures.closedHoldStrong()));
    }
    most(RISES, behaviour.risesFrom(), figures.selfOpensFromWeak(), missed);
    if (behaviour.staysPut() && figures.staysPut() <= 0) {
      missed.add(new Blocker(STAYS_PUT, 0, figures.staysPut()));
    }
    most(LATCH_PUSH, behaviour.maxLatchPush(), figures.latchPush(), missed);
    most(OVER_CENTRE, behaviour.overCentreBy(), figures.overCentre(), missed);
    return missed;
  }

  /**
   * @param needed null where it is not asked
   * @param has null where it never does
   */
  private static void most(Blocker.Code code, Double needed, Double has, List<Blocker> missed) {
    if (needed != null && (has == null || has > needed)) {
      missed.add(new Blocker(code, needed, has == null ? Double.NaN : has));
    }
  }

  /** What is left of the tighter hand force limit, as a share of it. */
  static double handMargin(Job.Requirements asked, double open, double close) {
    return Math.min(
        (asked.handOpenLimit() - open) / asked.handOpenLimit(),
        (asked.handCloseLimit() - close) / asked.handCloseLimit());
  }

  /** Whether the stroke asked for is left at both ends. */
  static boolean spares(Job job, Travel travel, double compressed, double extended) {
    Job.Requirements asked = job.requirements();
    return travel.shortest() - compressed >= asked.compressedReserve()
        && (asked.openStop() == OpenStop.SPRING_STOP
            || extended - travel.longest() >= asked.extendedReserve());
  }

  /** The least margin of hand force, hold ratio and reserves, each in its own measure. */
  static double margin(
      Job job,
      double handMargin,
      Double holdRatio,
      double compressedReserve,
      double extendedReserve) {
    Job.Requirements asked = job.requirements();
    double least = handMargin;
    if (holdRatio != null && asked.minHoldRatio() > 0) {
      least = Math.min(least, (holdRatio - asked.minHoldRatio()) / asked.minHoldRatio());
    }
    least = Math.min(least, (compressedReserve - asked.compressedReserve()) / RESERVE_SCALE);
    if (asked.openStop() == OpenStop.FLAP_STOP) {
      least = Math.min(least, (extendedReserve - asked.extendedReserve()) / RESERVE_SCALE);
    }
    return least;
  }

  static double margin(Job job, Figures figures) {
    return margin(
        job,
        handMargin(job.requirements(), figures.handOpenMaxWeak(), figures.handCloseMaxStrong()),
        figures.holdRatioOpen(),
        figures.compressedReserve(),
        figures.extendedReserve());
  }
}
