package org.staywright.fit;

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
    if (figures.handForce() > asked.maxHandForce()) {
      missed.add(new Blocker(Blocker.Code.HAND_FORCE, asked.maxHandForce(), figures.handForce()));
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
    return missed;
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
      double handForce,
      Double holdRatio,
      double compressedReserve,
      double extendedReserve) {
    Job.Requirements asked = job.requirements();
    double least = (asked.maxHandForce() - handForce) / asked.maxHandForce();
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
        figures.handForce(),
        figures.holdRatioOpen(),
        figures.compressedReserve(),
        figures.extendedReserve());
  }
}
