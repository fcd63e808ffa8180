package org.staywright.fit.assess;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Figures.Strength;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.SetPrice;
import org.staywright.fit.job.Shortfall;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.Travel;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Unit;

/**
 * One candidate, part × count, judged plainly and exactly: the equation of state at every sample.
 * The ranking uses it for the rows it returns and wherever its fast screening cannot decide.
 *
 * @param rejection why it is out, null where it is not
 * @param fit what it does, null where it is out
 * @param shortfall by how much it is out, null where it is not or that cannot be counted
 */
public record Assessment(Rejection rejection, Fit fit, Shortfall shortfall) {

  Assessment(Rejection rejection, Fit fit) {
    this(rejection, fit, null);
  }

  /** Least ratio of buckling load to fast force: the same that a row of our range must keep. */
  public static final double LEAST_BUCKLING_FACTOR = 3;

  /** Less gas than this at the end of the service, and the part is out. */
  public static final double LEAST_GAS = 0.1;

  private static Assessment out(Rejection rejection) {
    return new Assessment(rejection, null);
  }

  private static Assessment out(Rejection rejection, double needed, double has, Unit unit) {
    return new Assessment(rejection, null, new Shortfall(needed, has, unit));
  }

  /** Judges a part of a range, with the end fittings that suit it best. */
  public static Assessment of(Job job, Range range, Part part, int count) {
    return of(job, new Paths(job), range, part, count);
  }

  public static Assessment of(Job job, Paths paths, Range range, Part part, int count) {
    Assessment still = still(job, paths, range, part, count);
    // Motions take ten times as long as all the rest: last, and only of what fits otherwise.
    return still.fit() == null || !still.fit().fits()
        ? still
        : new Assessment(null, still.fit().missing(Opening.missed(job, still.fit())));
  }

  /** The same without what is asked in time. */
  public static Assessment still(Job job, Paths paths, Range range, Part part, int count) {
    return job.mechanism()
        .handOrSeat(
            moved -> ofSprings(job, paths, range, part, count),
            seat -> SeatAssessment.of(job, paths.criteria(), seat, part));
  }

  private static Assessment ofSprings(Job job, Paths paths, Range range, Part part, int count) {
    Optional<Rejection> early = early(job, part, count);
    if (early.isPresent()) {
      return early.get() == Rejection.STOCK
          ? out(Rejection.STOCK, count, part.offer().stock(), null)
          : out(early.get());
    }
    List<Fitting> rods = FittingChoice.of(range.fittings(), job.rodEnd(), part.ends().rod());
    List<Fitting> tubes = FittingChoice.of(range.fittings(), job.tubeEnd(), part.ends().tube());
    if (rods.isEmpty() || tubes.isEmpty()) {
      return out(Rejection.FITTING);
    }
    Assessment first = null;
    int rod = 0;
    int tube = 0;
    while (rod < rods.size() && tube < tubes.size()) {
      Trial trial = Trial.of(job, paths, part, count, rods.get(rod), tubes.get(tube));
      Assessment next = trial.judged(job, paths.criteria());
      if (first == null) {
        first = next;
      }
      if (!trial.failsRod() && !trial.failsTube()) {
        return next;
      }
      rod += trial.failsRod() ? 1 : 0;
      tube += trial.failsTube() ? 1 : 0;
    }
    return first;
  }

  /** Where the rod hangs: as wished, else at the end that is lower at the start of the travel. */
  public static RodEnd rodEnd(Job job) {
    RodEnd wish = job.mechanism().rodEnd();
    if (wish != RodEnd.EITHER) {
      return wish;
    }
    return job.mechanism().rise(0).orElse(0) < 0 ? RodEnd.MOVING : RodEnd.FRAME;
  }

  /** What can be told without any geometry. */
  static Optional<Rejection> early(Job job, Part part, int count) {
    return job.filters().families().contains(part.family())
        ? unfit(job, part, count)
        : Optional.of(Rejection.FAMILY);
  }

  /** The same for a part of the right family. */
  static Optional<Rejection> unfit(Job job, Part part, int count) {
    Job.Filters filters = job.filters();
    if (filters.finish() != null && filters.finish() != part.finish()) {
      return Optional.of(Rejection.FINISH);
    }
    if (filters.inStockOnly() && part.offer().stock() < count) {
      return Optional.of(Rejection.STOCK);
    }
    if (job.conditions().coldest() < part.limits().coldest()
        || job.conditions().hottest() > part.limits().hottest()) {
      return Optional.of(Rejection.TEMPERATURE);
    }
    return Optional.empty();
  }

  /** A part with a pair of end fittings, before any verdict on the requirements. */
  private record Trial(
      Hung hung, Fitting rod, Fitting tube, Path path, Rejection early, Figures figures) {

    static Trial of(Job job, Paths paths, Part part, int count, Fitting rod, Fitting tube) {
      Hung hung = Hung.of(part, count, rod, tube);
      Path path = paths.of(hung.extended());
      Rejection early = path.misfit(job.requirements(), hung.compressed(), hung.extended());
      if (early == null && SpringState.gasLeft(job.conditions(), part.wear()) < LEAST_GAS) {
        early = Rejection.AGEING;
      }
      Optional<Peak> peak =
          early == null ? Peak.of(job, path.travel(), part, hung.extended()) : Optional.empty();
      if (early == null && peak.isEmpty()) {
        early = Rejection.PRESSURE;
      }
      Figures figures = peak.map(hardest -> Figuring.of(job, path, hung, hardest)).orElse(null);
      return new Trial(hung, rod, tube, path, early, figures);
    }

    boolean failsRod() {
      return strong() && fails(rod);
    }

    boolean failsTube() {
      return strong() && fails(tube);
    }

    private Strength strength() {
      return figures.strength();
    }

    private boolean strong() {
      return early == null
          && strength().peakPressure() <= hung.part().limits().pressure()
          && strength().bucklingFactor() >= LEAST_BUCKLING_FACTOR;
    }

    private boolean fails(Fitting fitting) {
      return overloads(fitting) || strength().swing() > fitting.swing();
    }

    private boolean overloads(Fitting fitting) {
      return load() > fitting.rating();
    }

    private double load() {
      return Math.max(strength().peakMountLoad(), strength().stopLoad());
    }

    private Assessment early(Job job) {
      Requirements asked = job.requirements();
      Travel travel = path.travel();
      return switch (early) {
        case TOO_LONG_CLOSED ->
            out(
                early,
                travel.shortest() - asked.compressedReserve(),
                hung.compressed(),
                MILLIMETRE);
        case TOO_SHORT_OPEN ->
            asked.openStop() == Job.OpenStop.FLAP_STOP
                ? out(
                    early, travel.longest() + asked.extendedReserve(), hung.extended(), MILLIMETRE)
                : out(early);
        case AGEING ->
            out(
                early,
                LEAST_GAS,
                SpringState.gasLeft(job.conditions(), hung.part().wear()),
                PERCENT);
        default -> out(early);
      };
    }

    Assessment judged(Job job, Criteria criteria) {
      if (early != null) {
        return early(job);
      }
      Part part = hung.part();
      if (strength().peakPressure() > part.limits().pressure()) {
        return out(Rejection.PRESSURE, part.limits().pressure(), strength().peakPressure(), BAR);
      }
      if (strength().bucklingFactor() < LEAST_BUCKLING_FACTOR) {
        return out(Rejection.BUCKLING, LEAST_BUCKLING_FACTOR, strength().bucklingFactor(), null);
      }
      if (overloads(rod) || overloads(tube)) {
        double rating = Math.min(rod.rating(), tube.rating());
        return out(Rejection.FITTING_LOAD, rating, load(), NEWTON);
      }
      if (failsRod() || failsTube()) {
        double swing = Math.min(rod.swing(), tube.swing());
        return out(Rejection.SWING, swing, strength().swing(), DEGREE);
      }
      List<Blocker> blockers = new ArrayList<>(criteria.missed(figures));
      if (path.blocker() != null) {
        blockers.add(path.blocker());
      }
      SetPrice price = SetPrice.of(hung.count(), part.offer(), rod, tube).with(job.beside());
      return new Assessment(
          null,
          new Fit(
              part,
              hung.count(),
              rod,
              tube,
              rodEnd(job),
              figures,
              blockers,
              price.amount(),
              price.days(),
              Double.NaN));
    }
  }
}
