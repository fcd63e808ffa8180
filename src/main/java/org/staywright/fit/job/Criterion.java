package org.staywright.fit.job;

import static org.staywright.fit.job.Term.above;
import static org.staywright.fit.job.Term.atLeast;
import static org.staywright.fit.job.Term.atMost;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.MILLIMETRE_PER_SECOND;
import static org.staywright.unit.Unit.NEWTON;
import static org.staywright.unit.Unit.NEWTON_METRE;
import static org.staywright.unit.Unit.SECOND;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.Mechanism;
import org.staywright.part.Coded;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/**
 * What can be asked of a fit and be missed by a little: one row each, read by whoever judges,
 * shows, writes or reads requirements.
 */
public enum Criterion implements Coded {
  /** One limit for both ways. */
  HAND_FORCE(
      atMost(NEWTON)
          .field("maxHandForceN", Term.HAND, 50.0)
          .when(job -> job.requirements().oneHandLimit())
          .worst(figures -> figures.hand().worstEitherWay())
          .ofTheLoad()
          .telling()
          .margin()
          .yields("0.1")),
  /** Where opening and closing have limits of their own. */
  HAND_OPEN(
      atMost(NEWTON)
          .field("maxHandOpenN", Term.HAND)
          .asked(
              job -> job.requirements().oneHandLimit() ? null : job.requirements().handOpenLimit())
          .worst(figures -> figures.hand().openWorst())
          .ofTheLoad()
          .telling()
          .margin()
          .yields("0.1")),
  HAND_CLOSE(
      atMost(NEWTON)
          .field("maxHandCloseN", Term.HAND)
          .asked(
              job -> job.requirements().oneHandLimit() ? null : job.requirements().handCloseLimit())
          .worst(figures -> figures.hand().closeWorst())
          .ofTheLoad()
          .telling()
          .margin()
          .yields("0.1")),
  HOLD_RATIO(
      atLeast(null)
          .field("minHoldRatio", Bound.between(0, 10, ""), 1.1)
          .worst(figures -> figures.hold().ratio())
          .atTheEnd()
          .ofTheLoad()
          .holding()
          .telling()
          .margin()
          .yields("-0.01", 1.05)),
  /** In newtons at the handle; what is kept of it counts as margin also where none is asked. */
  HOLD_OPEN(
      atLeast(NEWTON)
          .field("minHoldOpenN", Term.FORCE)
          .worst(figures -> figures.hold().open())
          .atTheEnd()
          .ofTheLoad()
          .holding()
          .telling()
          .margin(20, 0)),
  COMPRESSED_RESERVE(
      atLeast(MILLIMETRE)
          .field("compressedReserveMm", Term.RESERVE, 5.0)
          .has(figures -> figures.lengths().compressedReserve())
          .ofTheLengths()
          .margin(10e-3)
          .yields("-0.1")),
  EXTENDED_RESERVE(
      atLeast(MILLIMETRE)
          .field("extendedReserveMm", Term.RESERVE, 4.0)
          .when(job -> job.requirements().openStop() == Job.OpenStop.FLAP_STOP)
          .has(figures -> figures.lengths().extendedReserve())
          .ofTheLengths()
          .margin(10e-3)
          .yields("-0.1")),
  /** Extended length that would stop the flap at its opening angle: judged with the path. */
  SPRING_STOP(atMost(MILLIMETRE).asked(job -> null)),
  STAYS_SHUT(
      above(NEWTON_METRE, NEWTON)
          .field("staysShut")
          .worst(figures -> figures.hold().closedLeast())
          .measuredBy(figures -> figures.hold().latchPush())
          .ofTheLoad()
          .holding()
          .telling()),
  RISES(
      atMost(DEGREE, MILLIMETRE)
          .field("risesFromDeg", Term.ANGLE)
          .field("risesFromMm", Bound.between(0, 5000, "mm"))
          .on(Term.MOVED)
          .has(figures -> Term.orNever(figures.hand().selfOpensFromWorst()))
          .ofTheLoad()),
  /** Nominal. Least force at the hand that moves it, below zero where it moves by itself. */
  STAYS_PUT(
      above(NEWTON)
          .asked(job -> job.requirements().still() == null ? null : 0.0)
          .on(Term.MOVED)
          .has(figures -> Term.orNever(figures.hand().staysPut()))
          .ofTheLoad()),
  LATCH_PUSH(
      atMost(NEWTON)
          .field("maxLatchPushN", Term.FORCE)
          .on(Term.MOVED)
          .has(figures -> figures.hold().latchPush())
          .ofTheLoad()
          .telling()),
  OVER_CENTRE(
      atMost(DEGREE, MILLIMETRE)
          .field("overCentreByDeg", Term.ANGLE)
          .on(Term.FLAP)
          .has(figures -> Term.orNever(figures.hold().overCentre()))),
  /** What is left with one spring fewer must still keep it open. */
  ONE_FAILED(
      above(NEWTON)
          .field("staysWithOneFailed")
          .has(figures -> figures.oneFailed().hold())
          .atTheEnd()
          .ofTheLoad()
          .holding()),
  /** Where none is needed, a spring must make something lighter: newtons saved at the hand. */
  NO_GAIN(
      above(NEWTON)
          .asked((job, bare) -> bare != null && !bare.springNeeded() ? 0.0 : null)
          .has((bare, figures) -> bare == null ? Double.NaN : bare.gain(figures.hand()))),
  /** In time; asked after only where nothing else is missed. */
  STOP_SPEED(
      atMost(MILLIMETRE_PER_SECOND)
          .field("maxStopSpeedMmPerS", Bound.above(0, 20_000, "mm/s"))
          .on(Term.MOVED)
          .inTime(0)),
  STOP_ENERGY(
      atMost(JOULE).field("maxStopEnergyJ", Bound.above(0, 10_000, "J")).on(Term.MOVED).inTime(1)),
  OPENING_TIME(
      atMost(SECOND).field("maxOpeningTimeS", Bound.above(0, 60, "s")).on(Term.MOVED).inTime(1)),
  /** Stroke of a column against the height that can be set. */
  HEIGHT_TRAVEL(
      atLeast(MILLIMETRE)
          .on(Term.SEAT)
          .asked(job -> job.mechanism().end())
          .hasUnderSeat(SeatFigures::stroke)),
  RISES_EMPTY(
      atLeast(null).on(Term.SEAT).asked(job -> 1.0).hasUnderSeat(SeatFigures::risesEmpty).margin()),
  SINKS_UNDER_LIGHTEST(
      atLeast(null)
          .on(Term.SEAT)
          .asked(job -> 1.0)
          .hasUnderSeat(SeatFigures::sinksUnderLightest)
          .margin()),
  /** How far a locked column gives when the heaviest sitter drops onto it. */
  BOUNCE(
      atMost(MILLIMETRE, 1)
          .field("maxBounceMm", Bound.above(0, 200, "mm"), 40.0)
          .on(Term.SEAT)
          .hasUnderSeat(SeatFigures::greatestBounce)
          .margin());

  private final Term term;

  Criterion(Term term) {
    this.term = term;
  }

  /** Whether it can be asked of a mechanism at all. */
  public boolean concerns(Mechanism mechanism) {
    return concerns(mechanism.code());
  }

  /**
   * @param code of a mechanism
   */
  public boolean concerns(String code) {
    return term.mechanisms.contains(code);
  }

  /** The fields that ask for it, none where something else does. */
  public List<Ask> asks() {
    return List.copyOf(term.asks);
  }

  /** Unit at the boundary for a travel that turns or shifts, null for a plain ratio. */
  public @Nullable Unit unit(Mechanism.Movement kind) {
    return kind == Mechanism.Movement.TURNS ? term.turning : term.shifting;
  }

  /** Decimals that it is shown with. */
  public int decimals() {
    return term.decimals;
  }

  /** What is asked, SI; null where it is not. */
  public @Nullable Double asked(Job job, @Nullable Bare bare) {
    return concerns(job.mechanism()) ? term.asked(this, job, bare) : null;
  }

  /** What a part has, SI; NaN where it never does, infinite where nothing speaks against it. */
  public double has(@Nullable Bare bare, Outcome outcome) {
    return outcome.has(term, bare);
  }

  /** Where that comes to its worst; null where it is nominal, the same in all or without bound. */
  public @Nullable Extreme worst(Outcome outcome) {
    return term.worst == null ? null : outcome.as(term.worst, seat -> null);
  }

  /** Whether what a part has meets what is asked; what never does meets nothing. */
  public boolean met(double needed, double has) {
    return switch (term.sense) {
      case AT_MOST -> has <= needed;
      case AT_LEAST -> has >= needed;
      case ABOVE -> has > needed;
    };
  }

  public Term.Sense sense() {
    return term.sense;
  }

  /** Whether it is a length of springs or mounts. */
  public boolean lengthwise() {
    return term.turning == MILLIMETRE;
  }

  /** Whether only a motion can tell. */
  public boolean inTime() {
    return term.inTime;
  }

  /** Whether it can be asked of the load without a spring. */
  public boolean ofTheLoad() {
    return term.ofTheLoad;
  }

  /** Whether it depends on where exactly the travel ends. */
  public boolean atTheEnd() {
    return term.atTheEnd;
  }

  /** Whether it keeps the load where it ends. */
  public boolean holding() {
    return term.holding;
  }

  /** Whether a few samples of a travel tell that it is missed. */
  public boolean telling() {
    return term.telling;
  }

  /** Whether it asks nothing but lengths. */
  public boolean ofTheLengths() {
    return term.ofTheLengths;
  }

  /** How it may give way, empty where it never does. */
  public Optional<Yield> yields() {
    return Optional.ofNullable(term.yields);
  }

  /** By how much a part misses what is needed, as a share of it. */
  public double miss(Job job, Outcome outcome, double needed, double has) {
    return term.miss(job, outcome, needed, has);
  }

  /** From what on margin is counted; null where it does not count. */
  public @Nullable Double marginFrom(Job job, @Nullable Bare bare) {
    return concerns(job.mechanism()) ? term.marginFrom(asked(job, bare)) : null;
  }

  /** How far beyond that a part is, in the measure of the criterion. */
  public double margin(double from, double has) {
    return term.above(from, has);
  }
}
