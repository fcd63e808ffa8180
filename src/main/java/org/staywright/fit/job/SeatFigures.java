package org.staywright.fit.job;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.SeatColumn;

/**
 * What a column does under a seat. SI.
 *
 * @param seat that it carries
 * @param stroke of the column, m
 * @param risesEmpty least slow push over the empty seat's weight, weak
 * @param sinksUnderLightest lightest load over the greatest slow push against it, strong
 * @param lowering root mean square over the travel of the push that lowers the empty seat, N
 * @param bounce how far it gives under the heaviest sitter when locked
 * @param strength how hard it is worked
 */
public record SeatFigures(
    SeatColumn seat,
    double stroke,
    double risesEmpty,
    double sinksUnderLightest,
    double lowering,
    Bounce bounce,
    Strength strength)
    implements Outcome {

  /**
   * How far the locked column gives at once, too fast for heat to pass, under the heaviest sitter,
   * weak; where it comes down on its stop, up to there.
   *
   * @param low locked at the lowest height, m
   * @param middle half-way, m
   * @param high at the greatest height, m
   */
  public record Bounce(double low, double middle, double high) {}

  /**
   * @param thrust load on the column's bearing under the heaviest sitter, N
   * @param lockLoad most that the lock has to hold beyond the open force, weak, N
   * @param peakPressure highest absolute gas pressure on either side of the piston, strong, Pa
   * @param bucklingFactor buckling load over the thrust at the greatest height
   */
  public record Strength(
      double thrust, double lockLoad, double peakPressure, double bucklingFactor) {}

  /** The most that it gives of the three heights, m. */
  public double greatestBounce() {
    return Math.max(bounce.low, Math.max(bounce.middle, bounce.high));
  }

  /** That the seat asks, m. */
  public double travel() {
    return seat.end();
  }

  /** How far the seat goes on this column, m. */
  public double reached() {
    return Math.min(seat.end(), stroke);
  }

  @Override
  public <T> T as(Function<Figures, T> ofTheHand, Function<SeatFigures, T> ofTheSeat) {
    return ofTheSeat.apply(this);
  }

  @Override
  public double has(Term term, @Nullable Bare bare) {
    return term.seat.applyAsDouble(this);
  }

  /** Where the seat is highest. */
  @Override
  public double extended() {
    return seat.end();
  }

  @Override
  public @Nullable Double endSpeed() {
    return null;
  }

  @Override
  public double end() {
    return seat.end();
  }

  @Override
  public double effort() {
    return lowering;
  }

  @Override
  public double peakPressure() {
    return strength.peakPressure();
  }

  @Override
  public double bucklingFactor() {
    return strength.bucklingFactor();
  }
}
