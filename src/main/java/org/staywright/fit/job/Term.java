package org.staywright.fit.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.StraightLift;
import org.staywright.part.Coded;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/** What one row of {@link Criterion} says: filled in there, read through it. */
public final class Term {

  /** Which side of what is asked is good. */
  public enum Sense implements Coded {
    AT_MOST,
    AT_LEAST,
    ABOVE
  }

  /** What a part has where a hand moves the load. */
  interface Has {
    double of(@Nullable Bare bare, Figures figures);
  }

  static final Set<String> FLAP = Set.of(HingedFlap.CODE);
  static final Set<String> MOVED = Set.of(HingedFlap.CODE, StraightLift.CODE);
  static final Set<String> BY_HAND = Set.of(HingedFlap.CODE, StraightLift.CODE, ForceProfile.CODE);
  static final Set<String> SEAT = Set.of(SeatColumn.CODE);

  static final Bound HAND = Bound.above(0, 2000, "N");
  static final Bound FORCE = Bound.between(0, 2000, "N");
  static final Bound RESERVE = Bound.between(0, 500, "mm");
  static final Bound ANGLE = Bound.between(0, 270, "°");

  /** A length of which nothing is asked is missed by shares of this, m. */
  private static final double LENGTH = 10e-3;

  final Sense sense;
  final @Nullable Unit turning;
  final @Nullable Unit shifting;
  final int decimals;
  final List<Ask> asks = new ArrayList<>();
  Set<String> mechanisms = BY_HAND;
  Has hand = (bare, figures) -> Double.NaN;
  @Nullable Function<Figures, @Nullable Extreme> worst;
  ToDoubleFunction<SeatFigures> seat = figures -> Double.NaN;
  boolean inTime;
  boolean ofTheLoad;
  boolean ofTheLengths;
  boolean atTheEnd;
  boolean holding;
  boolean telling;
  @Nullable Yield yields;
  private Predicate<Job> when = job -> true;
  private @Nullable BiFunction<Job, @Nullable Bare, @Nullable Double> asked;
  private @Nullable Function<Figures, Double> measure;

  /** What counts as 1 of margin: NaN for all of what is asked, 0 for none. */
  private double marginScale;

  /** What margin counts from where nothing is asked. */
  private @Nullable Double marginFrom;

  private Term(Sense sense, @Nullable Unit turning, @Nullable Unit shifting, int decimals) {
    this.sense = sense;
    this.turning = turning;
    this.shifting = shifting;
    this.decimals = decimals;
  }

  static Term atMost(Unit unit) {
    return new Term(Sense.AT_MOST, unit, unit, 0);
  }

  static Term atMost(Unit unit, int decimals) {
    return new Term(Sense.AT_MOST, unit, unit, decimals);
  }

  static Term atMost(Unit turning, Unit shifting) {
    return new Term(Sense.AT_MOST, turning, shifting, 0);
  }

  static Term atLeast(@Nullable Unit unit) {
    return new Term(Sense.AT_LEAST, unit, unit, unit == null ? 2 : 0);
  }

  static Term above(Unit unit) {
    return new Term(Sense.ABOVE, unit, unit, 0);
  }

  static Term above(Unit turning, Unit shifting) {
    return new Term(Sense.ABOVE, turning, shifting, 1);
  }

  static double orNever(@Nullable Double figure) {
    return figure == null ? Double.NaN : figure;
  }

  /** Asked by a yes. */
  Term field(String name) {
    return field(name, null, null);
  }

  Term field(String name, Bound bound) {
    return field(name, bound, null);
  }

  Term field(String name, @Nullable Bound bound, @Nullable Double fallback) {
    asks.add(new Ask(name, bound, fallback));
    return this;
  }

  /** What is asked, where that is not just the number of its field. */
  Term asked(Function<Job, @Nullable Double> of) {
    return asked((job, bare) -> of.apply(job));
  }

  Term asked(BiFunction<Job, @Nullable Bare, @Nullable Double> of) {
    asked = of;
    return this;
  }

  Term when(Predicate<Job> holds) {
    when = holds;
    return this;
  }

  Term on(Set<String> codes) {
    mechanisms = codes;
    return this;
  }

  Term has(ToDoubleFunction<Figures> of) {
    return has((bare, figures) -> of.applyAsDouble(figures));
  }

  Term has(Has of) {
    hand = of;
    return this;
  }

  /** A figure in its worst corner; without bound where it is null. */
  Term worst(Function<Figures, @Nullable Extreme> of) {
    worst = of;
    return has(
        figures -> {
          @Nullable Extreme extreme = of.apply(figures);
          return extreme == null ? Double.POSITIVE_INFINITY : extreme.value();
        });
  }

  Term hasUnderSeat(ToDoubleFunction<SeatFigures> of) {
    seat = of;
    return this;
  }

  /** What is missed as a force at the hand, where nothing measures against nothing. */
  Term measuredBy(Function<Figures, Double> newtons) {
    measure = newtons;
    return this;
  }

  /** Can be asked of the load without a spring. */
  Term ofTheLoad() {
    ofTheLoad = true;
    return this;
  }

  /** Depends on where exactly the travel ends. */
  Term atTheEnd() {
    atTheEnd = true;
    return this;
  }

  /** Keeps the load where it ends: nobody gives way on the conditions that decide it. */
  Term holding() {
    holding = true;
    return this;
  }

  /** Seen at some samples of a travel it is never missed by more than at all of them. */
  Term telling() {
    telling = true;
    return this;
  }

  /** Asks nothing but lengths, which a load without a spring does not have. */
  Term ofTheLengths() {
    ofTheLengths = true;
    return this;
  }

  Term yields(String step) {
    yields = Yield.by(step);
    return this;
  }

  Term yields(String step, double floor) {
    yields = Yield.by(step, floor);
    return this;
  }

  /** Counts towards the margin as a share of what is asked. */
  Term margin() {
    marginScale = Double.NaN;
    return this;
  }

  /** Counts towards the margin in these. */
  Term margin(double scale) {
    marginScale = scale;
    return this;
  }

  Term margin(double scale, double from) {
    marginFrom = from;
    return margin(scale);
  }

  Term inTime(int decimals) {
    Term term = new Term(sense, turning, shifting, decimals);
    term.asks.addAll(asks);
    term.mechanisms = mechanisms;
    term.inTime = true;
    return term;
  }

  @Nullable Double asked(Criterion criterion, Job job, @Nullable Bare bare) {
    if (!when.test(job)) {
      return null;
    }
    return asked == null ? job.requirements().limit(criterion) : asked.apply(job, bare);
  }

  double miss(Job job, Outcome outcome, double needed, double has) {
    if (Double.isNaN(has)) {
      return Double.POSITIVE_INFINITY;
    }
    if (measure != null) {
      return outcome.as(measure, seat -> Double.NaN) / job.requirements().handOpenLimit();
    }
    return Math.abs(needed - has) / (needed == 0 ? nothing(job) : Math.abs(needed));
  }

  /** What is missed is measured against this where nothing is asked for. */
  private double nothing(Job job) {
    Unit unit = job.mechanism().movement() == Mechanism.Movement.TURNS ? turning : shifting;
    if (unit == Unit.NEWTON) {
      return job.requirements().maxHandForce();
    }
    if (unit == Unit.DEGREE) {
      return job.mechanism().end();
    }
    return unit == Unit.MILLIMETRE ? LENGTH : 1;
  }

  /** From what on margin is counted; null where it does not count. */
  @Nullable Double marginFrom(@Nullable Double asked) {
    Double from = asked == null ? marginFrom : asked;
    if (from == null || marginScale == 0) {
      return null;
    }
    return from != 0 || !Double.isNaN(marginScale) ? from : null;
  }

  double above(double from, double has) {
    double above = sense == Sense.AT_MOST ? from - has : has - from;
    return above / (Double.isNaN(marginScale) ? from : marginScale);
  }
}
