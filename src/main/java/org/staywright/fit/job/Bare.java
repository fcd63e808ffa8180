package org.staywright.fit.job;

/**
 * The load without any spring, worst over what it may weigh. SI.
 *
 * @param hand what the hand has to do
 * @param hold what keeps it where it ends
 * @param drop most energy with which it reaches either stop when let go anywhere, heavy, friction
 *     counted, J
 * @param content whether it meets all that is asked by itself
 */
public record Bare(Figures.Hand hand, Figures.Hold hold, double drop, boolean content) {

  /** From here on a drop counts, J: our choice, no source. */
  private static final double DROPS = 4;

  /** Not only where it meets all that is asked by itself and does not drop. */
  public boolean springNeeded() {
    return !content || drops();
  }

  /** Whether it hurts when let go. */
  public boolean drops() {
    return drop >= DROPS;
  }

  /** What springs save at the hand, of the average or of the worst, whichever is more, N. */
  double gain(Figures.Hand with) {
    return Math.max(hand.rms() - with.rms(), hand.worst() - with.worst());
  }
}
