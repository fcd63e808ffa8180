package org.staywright.fit.rank;

import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Figuring;
import org.staywright.fit.assess.Holding;
import org.staywright.fit.assess.TravelSection;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Figures.Hand;
import org.staywright.fit.job.Figures.Hanging;
import org.staywright.fit.job.Figures.Hold;
import org.staywright.fit.job.Figures.Landing;
import org.staywright.fit.job.Figures.Lengths;
import org.staywright.fit.job.Figures.OneFailed;
import org.staywright.fit.job.Figures.Strength;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.job.Still;
import org.staywright.mechanism.Travel;
import org.staywright.unit.Unit;

/**
 * What {@link Lanes} tell of one spring in some number on one travel: the figures that requirements
 * are held against, and how far they may be off. What is only reported is left out, as NaN or null.
 */
public final class Glance {

  private final Job job;
  private final Travel travel;
  private final Alongside along;
  private final Lanes lanes;
  private final @Nullable Double overCentre;
  private final double holdRatio;
  private final double holdOpen;

  public Glance(Job job, Travel travel, Alongside along, Lanes lanes) {
    this.job = job;
    this.travel = travel;
    this.along = along;
    this.lanes = lanes;
    overCentre = Figuring.overCentre(travel, 1);
    holdRatio = asked(job, Criterion.HOLD_RATIO);
    holdOpen = asked(job, Criterion.HOLD_OPEN);
    Still asked = job.requirements().still();
    lanes.still = asked == null ? null : TravelSection.of(travel, asked.from(), asked.to());
    lanes.rising = job.requirements().asks(Criterion.RISES);
  }

  public Figures figures(Lanes.Hand hand, int lane, int count, double compressed, double extended) {
    double reach = travel.hand();
    Hold hold = hold(lane, count);
    return new Figures(
        new Lengths(
            travel.q()[0],
            travel.q()[travel.last()],
            travel.length()[0],
            travel.length()[travel.last()],
            travel.shortest(),
            travel.longest(),
            compressed,
            extended),
        new Hand(
            Double.NaN,
            Double.NaN,
            hand.rms(lane, travel),
            most(hand.open[lane] / reach),
            most(hand.close[lane] / reach),
            null,
            risesFrom(hand, lane),
            null,
            lanes.still == null ? null : hand.still[lane] / reach),
        hold,
        Landing.UNKNOWN,
        Strength.UNKNOWN,
        new OneFailed(
            job.requirements().asks(Criterion.ONE_FAILED)
                ? hold(lane, count - 1).open().value()
                : Double.NaN,
            Double.NaN),
        Hanging.UNKNOWN);
  }

  /** No lane knows where, or in which corner: nobody may ask a glance for these. */
  @SuppressWarnings("NullAway")
  private static Extreme most(double value) {
    return new Extreme(value, Double.NaN, null);
  }

  private @Nullable Double risesFrom(Lanes.Hand hand, int lane) {
    int from = (int) hand.held[lane] + 1;
    return !lanes.rising || from > travel.last() ? null : travel.q()[from];
  }

  private Hold hold(int lane, int count) {
    return Holding.of(
        travel,
        ends(lanes.weak, SpringState.WEAK, lane, count),
        ends(lanes.strong, SpringState.STRONG, lane, count),
        Double.NaN,
        overCentre);
  }

  /** By what shares of what is asked it misses its hold; 0 where it misses none. */
  public double holdMissed(int lane, int count) {
    double weak = ends(lanes.weak, SpringState.WEAK, lane, count).open();
    double strong = ends(lanes.strong, SpringState.STRONG, lane, count).open();
    double heavy = travel.heavy()[travel.last()];
    double light = travel.light()[travel.last()];
    double ratio =
        Math.min(
            Math.min(Holding.ratio(weak, heavy), Holding.ratio(weak, light)),
            Math.min(Holding.ratio(strong, heavy), Holding.ratio(strong, light)));
    double open = (Math.min(weak, strong) + Math.min(heavy, light)) / travel.hand();
    return share(holdRatio, ratio) + share(holdOpen, open);
  }

  /** Below all that a part may have where nothing is asked. */
  private static double asked(Job job, Criterion criterion) {
    Double limit = job.requirements().limit(criterion);
    return limit == null ? Double.NEGATIVE_INFINITY : limit;
  }

  private static double share(double asked, double has) {
    return Math.max(0, asked - has) / Math.max(1, Math.abs(asked));
  }

  private Holding.Ends ends(Lanes.Gas gas, SpringState state, int lane, int count) {
    int last = travel.last();
    double[] push = along.push(state);
    return new Holding.Ends(
        count * gas.first[lane] * travel.lever()[0] + push[0],
        count * gas.last[lane] * travel.lever()[last] + push[last]);
  }

  /**
   * Whether a requirement is neither surely met nor surely missed.
   *
   * @param moment how far the balance of moments may be off, N·m or N
   */
  boolean doubtful(
      Criteria criteria, Figures figures, Lanes.Hand hand, int lane, int count, double moment) {
    if (lanes.rising && hand.closeness[lane] <= moment) {
      return true;
    }
    double ratio =
        Holding.ratioError(
            travel,
            ends(lanes.weak, SpringState.WEAK, lane, count),
            ends(lanes.strong, SpringState.STRONG, lane, count),
            moment);
    return criteria.doubtful(figures, criterion -> error(criterion, moment, ratio));
  }

  /** Forces at the hand, moments and ratios are as sure as the springs; lengths are exact. */
  private double error(Criterion criterion, double moment, double ratio) {
    Unit unit = criterion.unit(job.mechanism().movement());
    if (unit == null) {
      return ratio;
    }
    return switch (unit) {
      case NEWTON -> moment / travel.hand();
      case NEWTON_METRE -> moment;
      default -> -1;
    };
  }

  double stopLoad(int lane, int count) {
    return Figuring.stopLoad(
        job,
        travel,
        count,
        ends(lanes.weak, SpringState.WEAK, lane, count).open(),
        ends(lanes.strong, SpringState.STRONG, lane, count).open());
  }
}
