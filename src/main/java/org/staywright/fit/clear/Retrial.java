package org.staywright.fit.clear;

import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Figuring;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.Forces;
import org.staywright.fit.assess.Hung;
import org.staywright.fit.assess.Opening;
import org.staywright.fit.assess.Path;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;

/**
 * A near part tried again in changed jobs: what is cheapest to tell comes first, the whole plain
 * assessment last.
 */
final class Retrial {

  /**
   * A changed job with what all parts share in it.
   *
   * @param telling what a few samples can tell
   */
  record Changed(Job job, Paths paths, Criteria telling) {

    static Changed of(Job job) {
      return new Changed(job, new Paths(job), Criteria.telling(job));
    }

    /** The same with other end fittings asked for, of which no path knows. */
    Changed with(Job other) {
      return new Changed(other, paths, telling);
    }
  }

  private final Range range;
  private final Fit near;

  Retrial(Range range, Fit near) {
    this.range = range;
    this.near = near;
  }

  /** Whether it fits with a knob turned by so many steps. */
  boolean fits(Knob knob, int steps) {
    return knob.at(steps).map(changed -> fits(changed, near.count(), 0)).orElse(false);
  }

  /** The first step that fits, between one that does not and one that does. */
  int first(Knob knob, int misses, int fits) {
    int low = misses;
    int high = fits;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (fits(knob, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  /**
   * @param longer what another end fitting adds to the length, m
   */
  boolean fits(Changed changed, int count, double longer) {
    if (!near.outcome().as(was -> meets(changed, count, longer, was), seat -> true)) {
      return false;
    }
    Fit fit = Assessment.still(changed.job(), changed.paths(), range, near.part(), count).fit();
    return fit != null && fit.fits() && Opening.keeps(changed.job(), fit);
  }

  /** Whether the requirements would be met, strength aside. */
  private boolean meets(Changed in, int count, double longer, Figures was) {
    Figures.Lengths now = was.lengths();
    Hung hung = new Hung(near.part(), count, now.compressed() + longer, now.extended() + longer, 0);
    Path path = in.paths().of(hung.extended());
    return path.blocker() == null
        && path.misfit(in.job().requirements(), hung.compressed(), hung.extended()) == null
        && spares(in.job(), path.travel(), hung)
        && in.telling().missed(atWorst(in.job(), path, hung, was)).isEmpty()
        && in.paths().criteria().missed(Figuring.slow(in.job(), path, hung)).isEmpty();
  }

  /** Whether the stroke asked for is left at both ends. */
  private static boolean spares(Job job, Travel travel, Hung hung) {
    Requirements asked = job.requirements();
    return travel.shortest() - hung.compressed() >= asked.compressedReserve()
        && (asked.openStop() == Job.OpenStop.SPRING_STOP
            || hung.extended() - travel.longest() >= asked.extendedReserve());
  }

  /** At both ends and where the hand had most to do before: it mostly still has. */
  private static Figures atWorst(Job job, Path path, Hung hung, Figures was) {
    Travel whole = path.travel();
    Travel few =
        whole.at(
            0,
            sample(whole, was.lengths(), was.hand().openWorst()),
            sample(whole, was.lengths(), was.hand().closeWorst()),
            whole.last());
    Path some = new Path(few, Alongside.of(job, few), null, null);
    Figuring.States states = Figuring.States.of(state -> Forces.of(job, some, hung, state));
    return new Figures(
        Figures.Lengths.UNKNOWN,
        Figuring.hand(job, few, states),
        Figuring.hold(few, states, hung.part().spring().sense()),
        Figures.Landing.UNKNOWN,
        Figures.Strength.UNKNOWN,
        Figures.OneFailed.UNKNOWN,
        Figures.Hanging.UNKNOWN);
  }

  private static int sample(Travel travel, Figures.Lengths was, Extreme worst) {
    double share = (worst.travel() - was.start()) / was.travelled();
    return (int) Math.rint(share * travel.last());
  }
}
