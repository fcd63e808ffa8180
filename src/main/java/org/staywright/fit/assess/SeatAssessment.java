package org.staywright.fit.assess;

import java.util.Optional;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.SeatFigures;
import org.staywright.fit.job.SetPrice;
import org.staywright.fit.job.SpringState;
import org.staywright.gas.BeyondEquation;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.LockingSpring;

/**
 * A column judged for a seat: whether it rises when nobody sits, sinks under the lightest sitter
 * when opened, and holds the heaviest when locked. Its cones need no end fittings, and it is one.
 */
final class SeatAssessment {

  /** Heights at which the open column is asked, both ends included. */
  private static final int HEIGHTS = 21;

  private final Job job;
  private final Criteria criteria;
  private final SeatColumn seat;
  private final Part part;
  private final LockingSpring column;

  private SeatAssessment(Job job, Criteria criteria, SeatColumn seat, Part part) {
    this.job = job;
    this.criteria = criteria;
    this.seat = seat;
    this.part = part;
    this.column = (LockingSpring) part.spring();
  }

  static Assessment of(Job job, Criteria criteria, SeatColumn seat, Part part) {
    Optional<Rejection> early = early(job, part);
    return early.isPresent()
        ? new Assessment(early.get(), null)
        : new SeatAssessment(job, criteria, seat, part).judged();
  }

  private static Optional<Rejection> early(Job job, Part part) {
    return part.family() == Family.SEAT_COLUMN
        ? Assessment.unfit(job, part, 1)
        : Optional.of(Rejection.FAMILY);
  }

  private Assessment judged() {
    if (seat.end() - column.stroke() > Path.FAR) {
      return new Assessment(Rejection.TOO_SHORT_OPEN, null);
    }
    if (SpringState.gasLeft(job.conditions(), part.wear()) < Assessment.LEAST_GAS) {
      return new Assessment(Rejection.AGEING, null);
    }
    try {
      return weighed(figures());
    } catch (BeyondEquation beyond) {
      return new Assessment(Rejection.PRESSURE, null);
    }
  }

  private Assessment weighed(SeatFigures figures) {
    if (figures.strength().peakPressure() > part.limits().pressure()) {
      return new Assessment(Rejection.PRESSURE, null);
    }
    if (figures.strength().bucklingFactor() < Assessment.LEAST_BUCKLING_FACTOR) {
      return new Assessment(Rejection.BUCKLING, null);
    }
    if (figures.strength().lockLoad() > column.lockForce()) {
      return new Assessment(Rejection.LOCK_FORCE, null);
    }
    SetPrice price = SetPrice.of(1, part.offer());
    Fit fit =
        new Fit(
            part,
            1,
            null,
            null,
            seat.rodEnd(),
            figures,
            criteria.missed(figures),
            price.amount(),
            price.days(),
            Double.NaN);
    return new Assessment(null, fit);
  }

  private SeatFigures figures() {
    double lowest = Math.min(seat.end(), column.stroke());
    Job.Conditions conditions = job.conditions();
    ForceLaw weak = SpringState.WEAK.law(part, conditions);
    ForceLaw strong = SpringState.STRONG.law(part, conditions);
    ForceLaw nominal = SpringState.NOMINAL.law(part, conditions);
    double rises = Double.POSITIVE_INFINITY;
    double sinks = Double.POSITIVE_INFINITY;
    double lowering = 0;
    for (int i = 0; i < HEIGHTS; i++) {
      double x = lowest * i / (HEIGHTS - 1);
      rises = Math.min(rises, weak.giving(x, conditions.coldest()) / seat.empty());
      sinks = Math.min(sinks, seat.light() / strong.taking(x, conditions.hottest()));
      double push = nominal.taking(x, conditions.nominal()) - seat.empty();
      lowering += push * push / HEIGHTS;
    }
    SeatFigures.Strength strength =
        new SeatFigures.Strength(
            seat.heavy(),
            Math.max(0, seat.heavy() - weak.force(0, conditions.coldest())),
            highest(strong, lowest),
            column.criticalLoad(column.extendedLength(), 0) / seat.heavy());
    return new SeatFigures(
        seat, column.stroke(), rises, sinks, Math.sqrt(lowering), bounce(lowest), strength);
  }

  private SeatFigures.Bounce bounce(double lowest) {
    SeatLock lock = SeatLock.of(job, part, SpringState.WEAK);
    return new SeatFigures.Bounce(
        lock.givesAtOnce(lowest, seat.heavy()),
        lock.givesAtOnce(lowest / 2, seat.heavy()),
        lock.givesAtOnce(0, seat.heavy()));
  }

  /**
   * Pa: when the open column is slammed down, or when the heaviest sitter drops onto the locked
   * one, which the full side bears.
   */
  private double highest(ForceLaw strong, double lowest) {
    double hot = job.conditions().hottest();
    double slammed = strong.fast(0, lowest, hot).pressure(lowest);
    return Math.max(slammed, strong.pressure(0, hot) + seat.heavy() / column.boreArea());
  }
}
