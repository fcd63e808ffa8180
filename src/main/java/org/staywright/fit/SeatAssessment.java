package org.staywright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.gas.BeyondEquation;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.LockingSpring;

/**
 * A column judged for a seat: whether it rises when nobody sits, sinks under the lightest sitter
 * when opened, and holds the heaviest when locked. Its cones need no end fittings, and it is one.
 */
final class SeatAssessment {

  /** Heights at which the open column is asked, both ends included. */
  private static final int HEIGHTS = 21;

  private final Job job;
  private final SeatColumn seat;
  private final Part part;
  private final LockingSpring column;

  private SeatAssessment(Job job, SeatColumn seat, Part part) {
    this.job = job;
    this.seat = seat;
    this.part = part;
    this.column = (LockingSpring) part.spring();
  }

  static Assessment of(Job job, SeatColumn seat, Part part) {
    Optional<Rejection> early = early(job, part);
    return early.isPresent()
        ? new Assessment(early.get(), null)
        : new SeatAssessment(job, seat, part).judged();
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
    if (Load.gasLeft(job.conditions(), part.wear()) < Assessment.LEAST_GAS) {
      return new Assessment(Rejection.AGEING, null);
    }
    try {
      return weighed(figures());
    } catch (BeyondEquation beyond) {
      return new Assessment(Rejection.PRESSURE, null);
    }
  }

  private Assessment weighed(SeatFigures figures) {
    if (figures.peakPressure() > part.limits().pressure()) {
      return new Assessment(Rejection.PRESSURE, null);
    }
    if (figures.bucklingFactor() < Assessment.LEAST_BUCKLING_FACTOR) {
      return new Assessment(Rejection.BUCKLING, null);
    }
    if (figures.lockLoad() > column.lockForce()) {
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
            missed(figures),
            price.amount(),
            price.days(),
            Double.NaN);
    return new Assessment(null, fit);
  }

  private static List<Blocker> missed(SeatFigures figures) {
    List<Blocker> missed = new ArrayList<>();
    atLeast(missed, Blocker.Code.HEIGHT_TRAVEL, figures.travel(), figures.stroke());
    atLeast(missed, Blocker.Code.RISES_EMPTY, 1, figures.risesEmpty());
    atLeast(missed, Blocker.Code.SINKS_UNDER_LIGHTEST, 1, figures.sinksUnderLightest());
    return missed;
  }

  private static void atLeast(List<Blocker> missed, Blocker.Code code, double needed, double has) {
    if (has < needed) {
      missed.add(new Blocker(code, needed, has));
    }
  }

  private SeatFigures figures() {
    double lowest = Math.min(seat.end(), column.stroke());
    ForceLaw weak = Load.WEAK.law(part, Load.gasLeft(job.conditions(), part.wear()));
    ForceLaw strong = Load.STRONG.law(part, 1);
    ForceLaw nominal = Load.NOMINAL.law(part, 1);
    double cold = job.conditions().coldest();
    double hot = job.conditions().hottest();
    double rises = Double.POSITIVE_INFINITY;
    double sinks = Double.POSITIVE_INFINITY;
    double lowering = 0;
    for (int i = 0; i < HEIGHTS; i++) {
      double x = lowest * i / (HEIGHTS - 1);
      rises = Math.min(rises, weak.giving(x, cold) / seat.empty());
      sinks = Math.min(sinks, seat.light() / strong.taking(x, hot));
      double push = nominal.taking(x, job.conditions().nominal()) - seat.empty();
      lowering += push * push / HEIGHTS;
    }
    return new SeatFigures(
        column.stroke(),
        seat.end(),
        rises,
        sinks,
        bounce(lowest),
        bounce(lowest / 2),
        bounce(0),
        seat.heavy(),
        Math.max(0, seat.heavy() - weak.force(0, cold)),
        Math.sqrt(lowering),
        Math.max(slammed(strong, lowest, hot), sat(hot)),
        column.criticalLoad(column.extendedLength(), 0) / seat.heavy());
  }

  private double bounce(double compression) {
    LockedSpring locked = column.locked(compression, job.conditions().nominal());
    double open = column.law().force(compression, job.conditions().nominal());
    return SeatCurve.sunk(locked, seat.heavy() - open);
  }

  /** Highest pressure when the open column is slammed down, Pa. */
  private static double slammed(ForceLaw strong, double lowest, double kelvin) {
    return strong.fast(0, lowest, kelvin).pressure(lowest);
  }

  /** Pressure of the full side when the heaviest sitter drops onto the locked column, Pa. */
  private double sat(double kelvin) {
    return Load.STRONG.law(part, 1).pressure(0, kelvin) + seat.heavy() / column.boreArea();
  }
}
