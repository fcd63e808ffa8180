package org.staywright.fit;

/**
 * What a column does under a seat. SI.
 *
 * @param stroke of the column, m
 * @param travel that the seat asks, m
 * @param risesEmpty least slow push over the empty seat's weight, weak
 * @param sinksUnderLightest lightest load over the greatest slow push against it, strong
 * @param bounceLow how far the locked column gives when the heaviest sitter sits down, slowly,
 *     nominal, at the lowest height, m
 * @param bounceMiddle the same half-way, m
 * @param bounceHigh the same at the greatest height, m
 * @param thrust load on the column's bearing under the heaviest sitter, N
 * @param lockLoad most that the lock has to hold beyond the open force, weak, N
 * @param lowering root mean square over the travel of the push that lowers the empty seat, N
 * @param peakPressure highest absolute gas pressure on either side of the piston, strong, Pa
 * @param bucklingFactor buckling load over the thrust at the greatest height
 */
public record SeatFigures(
    double stroke,
    double travel,
    double risesEmpty,
    double sinksUnderLightest,
    double bounceLow,
    double bounceMiddle,
    double bounceHigh,
    double thrust,
    double lockLoad,
    double lowering,
    double peakPressure,
    double bucklingFactor)
    implements Outcome {

  @Override
  public double end() {
    return travel;
  }

  @Override
  public double effort() {
    return lowering;
  }

  /** The greatest of the three, m. */
  public double greatestBounce() {
    return Math.max(bounceLow, Math.max(bounceMiddle, bounceHigh));
  }
}
