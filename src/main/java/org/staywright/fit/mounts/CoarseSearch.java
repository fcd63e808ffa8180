package org.staywright.fit.mounts;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.rank.Glance;
import org.staywright.fit.rank.Lanes;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.Travel;

/**
 * Many pairs of mounts looked at roughly: at a few angles, every part that spans, by the
 * polynomials alone and without strength. Remembers where each candidate did best in each region.
 */
class CoarseSearch {

  /** Every so-many of the 61 samples of a travel. */
  private static final int STEP = 6;

  /** A length that misses by less is looked at all the same: a better place may lie near, m. */
  private static final double SLACK = 6e-3;

  /** A spring or its distance shorter than this is none, m. */
  private static final double LEAST = 1e-3;

  private final Job job;
  private final Zones zones;
  private final UsableParts shelf;
  private final Objective aim;
  private final Rigid mechanism;
  private final Travel thin;
  private final Alongside along;
  private final int[] counts;
  private final double openLimit;
  private final double closeLimit;
  private final Lanes lanes = new Lanes();
  private final Lanes.Hand[] hands;
  private final int[] slot = new int[Lanes.WIDTH];
  private final double[] within = new double[Lanes.WIDTH];
  private final double[] beyond = new double[Lanes.WIDTH];
  private int used;
  private double @Nullable [] window;
  private Glance glance;

  /** By region, slot and count: the best value and the number of the pair it was at. */
  final double[] best;

  final int[] where;

  CoarseSearch(Job job, Zones zones, UsableParts shelf, int regions) {
    this.job = job;
    this.zones = zones;
    this.shelf = shelf;
    aim = new Objective(job, Criteria.roughly(job));
    mechanism = job.mechanism().rigid().orElseThrow();
    thin = mechanism.travel(mechanism.end()).every(STEP);
    along = Alongside.of(job, thin);
    glance = new Glance(job, thin, along, lanes);
    openLimit = job.requirements().handOpenLimit();
    closeLimit = job.requirements().handCloseLimit();
    counts = job.springCounts().stream().mapToInt(Integer::intValue).toArray();
    hands = new Lanes.Hand[counts.length];
    Arrays.setAll(hands, c -> new Lanes.Hand());
    best = new double[regions * shelf.size() * counts.length];
    where = new int[best.length];
    Arrays.fill(best, Objective.OUT);
  }

  /** The travel with the spring on these mounts, null where they may not be there. */
  @Nullable Travel travel(Mounts mounts) {
    if (!zones.open(mounts)) {
      return null;
    }
    Rigid hung = mechanism.at(mounts);
    window = window(hung);
    Travel travel = thin.on(hung);
    return travel.shortest() > LEAST ? travel : null;
  }

  /** How far the lengths of a rack miss at most, m; 0 where it spans. */
  double gap(UsableParts.Rack rack, Travel travel) {
    return Math.max(0, Math.max(-within(rack, travel), -beyond(rack, travel)));
  }

  /** Stroke left beyond what is asked, closed, m. */
  private double within(UsableParts.Rack rack, Travel travel) {
    return travel.shortest() - rack.compressed() - job.requirements().compressedReserve();
  }

  /** Stroke left beyond what is asked, open; where the spring is the stop, it must end near by. */
  private double beyond(UsableParts.Rack rack, Travel travel) {
    return window == null
        ? rack.extended() - travel.longest() - job.requirements().extendedReserve()
        : Math.min(0, Math.min(rack.extended() - window[0], window[1] - rack.extended()));
  }

  /** The lengths at which a spring may stop the travel, null where it is not the stop. */
  private double @Nullable [] window(Rigid hung) {
    if (job.requirements().openStop() != OpenStop.SPRING_STOP) {
      return null;
    }
    double about = Paths.window(mechanism);
    double before = hung.length(hung.end() - about);
    double after = Math.max(hung.length(hung.end()), hung.length(hung.end() + about));
    return new double[] {before, Math.max(before, after)};
  }

  /** Looks at a pair. */
  void look(int pair, int region, Mounts mounts) {
    Travel travel = travel(mounts);
    if (travel == null) {
      return;
    }
    glance = new Glance(job, travel, along, lanes);
    List<UsableParts.Rack> racks = shelf.racks;
    for (int i = 0; i < racks.size(); i++) {
      UsableParts.Rack rack = racks.get(i);
      if (within(rack, travel) < -SLACK) {
        break;
      }
      if (beyond(rack, travel) >= -SLACK) {
        load(pair, region, travel, rack);
      }
    }
    run(pair, region, travel);
  }

  private void load(int pair, int region, Travel travel, UsableParts.Rack rack) {
    for (int from = rack.from(); from < rack.to(); ) {
      int n = Math.min(rack.to() - from, Lanes.WIDTH - used);
      System.arraycopy(shelf.area, from, lanes.area, used, n);
      for (SpringState state : SpringState.values()) {
        copy(shelf.gas(state), lanes.of(state), from, n);
      }
      for (int j = 0; j < n; j++) {
        slot[used + j] = from + j;
      }
      Arrays.fill(within, used, used + n, within(rack, travel));
      Arrays.fill(beyond, used, used + n, beyond(rack, travel));
      used += n;
      from += n;
      if (used == Lanes.WIDTH) {
        run(pair, region, travel);
      }
    }
  }

  private void copy(UsableParts.Gas gas, Lanes.Gas to, int from, int n) {
    System.arraycopy(gas.mass(), from, to.mass, used, n);
    System.arraycopy(gas.base(), from, to.base, used, n);
    System.arraycopy(gas.friction(), from, to.friction, used, n);
  }

  private void run(int pair, int region, Travel travel) {
    if (used == 0) {
      return;
    }
    lanes.run(used, travel, along, counts, shelf.fits, hands);
    for (int lane = 0; lane < used; lane++) {
      for (int c = 0; c < counts.length; c++) {
        int at = ((region * shelf.size()) + slot[lane]) * counts.length + c;
        if (shelf.there(slot[lane], c)) {
          if (promising(lane, c, travel, best[at])) {
            double value = value(lane, c, travel);
            if (value < best[at]) {
              best[at] = value;
              where[at] = pair;
            }
          }
        }
      }
    }
    used = 0;
  }

  /** Keeps the better of both; of equal ones the earlier pair. */
  void merge(CoarseSearch other) {
    for (int at = 0; at < best.length; at++) {
      if (other.best[at] < best[at] || other.best[at] == best[at] && other.where[at] < where[at]) {
        best[at] = other.best[at];
        where[at] = other.where[at];
      }
    }
  }

  /** Whether it may be better than that: most are passed over before any figures are made. */
  boolean promising(int lane, int c, Travel travel, double than) {
    return byHand(lane, c, travel) < than && byAll(lane, c, travel) < than;
  }

  /** What it cannot be better than, by the hand alone. */
  private double byHand(int lane, int c, Travel travel) {
    double missed = handMissed(lane, c, travel);
    return missed > 0
        ? Objective.missed(missed)
        : aim.place(hands[c].rms(lane, travel), Math.max(0, 1 - effort(lane, c, travel)));
  }

  /** The same by lengths and hold besides: nearly what it comes to where it misses any. */
  private double byAll(int lane, int c, Travel travel) {
    double lengths = Math.max(0, -within[lane]) + Math.max(0, -beyond[lane]);
    // Where the spring is the stop, a rough look does not know where the travel ends.
    double hold = window == null ? glance.holdMissed(lane, counts[c]) : 0;
    double missed = handMissed(lane, c, travel) + lengths / Objective.LENGTH + hold;
    return missed > 0 ? Objective.missed(missed) : Double.NEGATIVE_INFINITY;
  }

  /** The hand's share of what it may do, in the worse way. */
  private double effort(int lane, int c, Travel travel) {
    return Math.max(hands[c].open[lane] / openLimit, hands[c].close[lane] / closeLimit)
        / travel.hand();
  }

  private double handMissed(int lane, int c, Travel travel) {
    return Math.max(
        Objective.share(hands[c].open[lane] / travel.hand() - openLimit, openLimit),
        Objective.share(hands[c].close[lane] / travel.hand() - closeLimit, closeLimit));
  }

  private double value(int lane, int c, Travel travel) {
    Requirements asked = job.requirements();
    double compressed = travel.shortest() - within[lane] - asked.compressedReserve();
    double extended =
        window == null
            ? travel.longest() + beyond[lane] + asked.extendedReserve()
            : travel.length()[travel.last()];
    // Where the spring is the stop, no reserve tells that it ends elsewhere.
    double off = window == null ? 0 : Math.max(0, -beyond[lane]);
    return aim.rough(glance.figures(hands[c], lane, counts[c], compressed, extended), off);
  }
}
