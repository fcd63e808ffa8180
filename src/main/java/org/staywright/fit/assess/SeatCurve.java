package org.staywright.fit.assess;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SeatFigures;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Part;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.LockedCurve;
import org.staywright.spring.LockedSpring;

/**
 * A column under a seat over the height that is set, from the lowest to the highest. SI; the arrays
 * are shared and only read.
 *
 * @param height above the lowest, m
 * @param compression of the column there, m
 * @param rising slow push of the open column as it rises, nominal, N
 * @param sinking slow push against which it is sat down, nominal, N
 * @param risingWeak the least push as it rises: cold, under-filled, aged, N
 * @param sinkingStrong the greatest against which it sinks: hot, over-filled, new, N
 */
public record SeatCurve(
    double[] height,
    double[] compression,
    double[] rising,
    double[] sinking,
    double[] risingWeak,
    double[] sinkingStrong) {

  private static final int SAMPLES = 31;

  /** Told of a locked column up to here, m. */
  private static final double FAR = 20e-3;

  /**
   * What the locked column gives over the height when somebody sits down.
   *
   * @param stiffness slope of its slow force where it is locked, nominal, N/m
   * @param light how far it gives at once under the lightest sitter, weak, m
   * @param heavy how far it gives at once under the heaviest, weak, m
   * @param settled how far under the heaviest when heat has passed, weak, m
   */
  public record Give(double[] stiffness, double[] light, double[] heavy, double[] settled) {}

  /** The open column in its job. */
  public static SeatCurve of(Job job, Part column, SeatFigures figures) {
    Job.Conditions conditions = job.conditions();
    ForceLaw nominal = SpringState.NOMINAL.law(column, conditions);
    ForceLaw weak = SpringState.WEAK.law(column, conditions);
    ForceLaw strong = SpringState.STRONG.law(column, conditions);
    SeatCurve curve =
        new SeatCurve(
            new double[SAMPLES],
            new double[SAMPLES],
            new double[SAMPLES],
            new double[SAMPLES],
            new double[SAMPLES],
            new double[SAMPLES]);
    double travel = figures.reached();
    for (int i = 0; i < SAMPLES; i++) {
      double x = travel * (SAMPLES - 1 - i) / (SAMPLES - 1);
      curve.height[i] = travel * i / (SAMPLES - 1);
      curve.compression[i] = x;
      curve.rising[i] = nominal.giving(x, conditions.nominal());
      curve.sinking[i] = nominal.taking(x, conditions.nominal());
      curve.risingWeak[i] = weak.giving(x, conditions.coldest());
      curve.sinkingStrong[i] = strong.taking(x, conditions.hottest());
    }
    return curve;
  }

  /** What it holds beyond its open force, locked in the middle of its height, nominal. */
  public static LockedCurve lockedHalfWay(Job job, Part column, SeatFigures figures) {
    LockedSpring locked = SeatLock.of(job, column, SpringState.NOMINAL).at(figures.reached() / 2);
    return LockedCurve.of(locked, Math.min(FAR, locked.greatest()), SAMPLES);
  }

  /** The same column locked at each of the heights. */
  public Give give(Job job, Part column, SeatFigures figures) {
    SeatColumn seat = figures.seat();
    SeatLock nominal = SeatLock.of(job, column, SpringState.NOMINAL);
    SeatLock weak = SeatLock.of(job, column, SpringState.WEAK);
    return new Give(
        over(x -> nominal.at(x).stiffness()),
        over(x -> weak.givesAtOnce(x, seat.light())),
        over(x -> weak.givesAtOnce(x, seat.heavy())),
        over(x -> weak.givesInTheEnd(x, seat.heavy())));
  }

  private double[] over(DoubleUnaryOperator figure) {
    return Arrays.stream(compression).map(figure).toArray();
  }
}
