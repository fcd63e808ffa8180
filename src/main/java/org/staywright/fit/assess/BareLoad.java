package org.staywright.fit.assess;

import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.mechanism.Travel;

/** The load without any spring, computed as a spring would be. */
final class BareLoad {

  private BareLoad() {}

  static Bare of(Job job, Travel travel) {
    Path path = new Path(travel, Alongside.nothing(travel), null, null);
    Figuring.States none = Figuring.States.of(state -> Forces.none(path, state));
    Figures.Hand hand = Figuring.hand(job, travel, none);
    Figures.Hold hold = Figuring.hold(travel, none, 1);
    Figures load =
        new Figures(
            Figures.Lengths.UNKNOWN,
            hand,
            hold,
            Figures.Landing.UNKNOWN,
            Figures.Strength.UNKNOWN,
            new Figures.OneFailed(hold.open().value(), hand.worst()),
            Figures.Hanging.UNKNOWN);
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
}
