package org.staywright.fit;

import org.staywright.mechanism.Travel;

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
  static final double DROPS = 4;

  /** Not only where it meets all that is asked by itself and does not drop. */
  public boolean springNeeded() {
    return !content || drops();
  }

  /** Whether it hurts when let go. */
  public boolean drops() {
    return drop >= DROPS;
  }

  static Bare of(Job job, Travel travel) {
    Path path = new Path(travel, Alongside.nothing(travel), null, null);
    Figuring.States none = Figuring.States.of(state -> Forces.none(path, state));
    Figures.Hand hand = Figuring.hand(job, travel, none);
    Figures.Hold hold = Figuring.hold(travel, none, 1);
    Figures load =
        new Figures(
            null,
            hand,
            hold,
            null,
            null,
            new Figures.OneFailed(hold.open().value(), hand.worst()),
            null);
    double drop = Math.max(reaching(travel, 1), reaching(travel, -1));
    // Where the spring is to be the stop, nothing else is; and no block knows of time.
    boolean asksMore =
        job.requirements().openStop() == Job.OpenStop.SPRING_STOP
            || job.requirements().asksInTime();
    boolean content = !asksMore && new Criteria(job, null).metByTheLoad(load);
    return new Bare(hand, hold, drop, content);
  }

  /** Energy left at one end: whatever stops on the way starts anew. */
  private static double reaching(Travel travel, int direction) {
    double energy = 0;
    for (int step = 0; step < travel.last(); step++) {
      int from = direction > 0 ? step : travel.last() - step;
      int to = from + direction;
      double push = direction * (travel.heavy()[from] + travel.heavy()[to]) / 2;
      double way = Math.abs(travel.q()[to] - travel.q()[from]);
      energy = Math.max(0, energy + (push - travel.friction()) * way);
    }
    return energy;
  }

  /** What springs save at the hand, of the average or of the worst, whichever is more, N. */
  double gain(Figures.Hand with) {
    return Math.max(hand.rms() - with.rms(), hand.worst() - with.worst());
  }
}
