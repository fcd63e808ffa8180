package org.staywright.fit;

import java.util.Arrays;
import java.util.List;
import org.staywright.fit.Job.OpenStop;
import org.staywright.mechanism.Mounted;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Travel;

/**
 * Many pairs of mounts looked at roughly: at a few angles, every part that spans, by the
 * polynomials alone and without strength. Remembers where each candidate did best in each region.
 */
final class Coarse {

  /** Every so-many of the 61 samples of a travel. */
  private static final int STEP = 6;

  /** A length that misses by less is looked at all the same: a better place may lie near, m. */
  private static final double SLACK = 6e-3;

  /** A spring or its distance shorter than this is none, m. */
  private static final double LEAST = 1e-3;

  private final Job job;
  private final Zones zones;
  private final Shelf shelf;
  private final Aim aim;
  private final Mounted mechanism;
  private final Travel thin;
  private final int[] counts;
  private final Lanes lanes = new Lanes();
  private final Lanes.Hand[] hands;
  private final int[] slot = new int[Lanes.WIDTH];
  private final double[] gap = new double[Lanes.WIDTH];
  private final double[] within = new double[Lanes.WIDTH];
  private final double[] beyond = new double[Lanes.WIDTH];
  private int used;
  private double[] window;

  /** By how much this pair comes too late over its dead centre, whatever hangs there. */
  private double tooLate;

  /** By region, slot and count: the best value and the number of the pair it was at. */
  final double[] best;

  final int[] where;

  Coarse(Job job, Zones zones, Shelf shelf, int regions) {
    this.job = job;
    this.zones = zones;
    this.shelf = shelf;
    aim = new Aim(job);
    mechanism = (Mounted) job.mechanism();
    thin = mechanism.travel(mechanism.end()).every(STEP);
    counts = job.springCounts().stream().mapToInt(Integer::intValue).toArray();
    hands = new Lanes.Hand[counts.length];
    Arrays.setAll(hands, c -> new Lanes.Hand());
    best = new double[regions * shelf.size() * counts.length];
    where = new int[best.length];
    Arrays.fill(best, Aim.OUT);
  }

  /** The travel with the spring on these mounts, null where they may not be there. */
  Travel travel(Mounts mounts) {
    if (!zones.open(mounts)) {
      return null;
    }
    Mounted hung = mechanism.at(mounts);
    window = window(hung);
    Travel travel = thin.on(hung);
    return travel.shortest() > LEAST ? travel : null;
  }

  /** How far the lengths of a rack miss at most, m; 0 where it spans. */
  double gap(Shelf.Rack rack, Travel travel) {
    return Math.max(0, Math.max(-within(rack, travel), -beyond(rack, travel)));
  }

  /** Stroke left beyond what is asked, closed, m. */
  private double within(Shelf.Rack rack, Travel travel) {
    return travel.shortest() - rack.compressed() - job.requirements().compressedReserve();
  }

  /** Stroke left beyond what is asked, open; where the spring is the stop, it must end near by. */
  private double beyond(Shelf.Rack rack, Travel travel) {
    return window == null
        ? rack.extended() - travel.longest() - job.requirements().extendedReserve()
        : Math.min(0, Math.min(rack.extended() - window[0], window[1] - rack.extended()));
  }

  /** The lengths at which a spring may stop the travel, null where it is not the stop. */
  private double[] window(Mounted hung) {
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
    behaviour(travel);
    List<Shelf.Rack> racks = shelf.racks;
    for (int i = 0; i < racks.size(); i++) {
      Shelf.Rack rack = racks.get(i);
      if (within(rack, travel) < -SLACK) {
        break;
      }
      if (beyond(rack, travel) >= -SLACK) {
        load(pair, region, travel, rack);
      }
    }
    run(pair, region, travel);
  }

  /** What is asked of how the load behaves, on this travel. */
  private void behaviour(Travel travel) {
    Behaviour asked = job.requirements().behaviour();
    lanes.rising =
        asked.risesFrom() == null ? null : Stretch.within(travel, asked.risesFrom(), null);
    lanes.still =
        asked.staysPut() ? Stretch.within(travel, asked.staysPutFrom(), asked.staysPutTo()) : null;
    Double centre = asked.overCentreBy() == null ? null : Figuring.overCentre(travel, 1);
    tooLate =
        asked.overCentreBy() == null
            ? 0
            : centre == null ? 1 : Math.max(0, centre - asked.overCentreBy());
  }

  /** By how much a lane misses that, in shares of the hand force allowed. */
  private double misbehaves(int lane, int c, double push, Travel travel) {
    Job.Requirements asked = job.requirements();
    double force = travel.hand() * asked.handOpenLimit();
    double misses = tooLate;
    if (lanes.rising != null) {
      misses += Math.max(0, hands[c].rising[lane]) / force;
    }
    if (lanes.still != null) {
      misses += Math.max(0, -hands[c].still[lane]) / force;
    }
    Double latch = asked.behaviour().maxLatchPush();
    return latch == null
        ? misses
        : misses + Math.max(0, push / force - latch / asked.handOpenLimit());
  }

  private void load(int pair, int region, Travel travel, Shelf.Rack rack) {
    for (int from = rack.from(); from < rack.to(); ) {
      int n = Math.min(rack.to() - from, Lanes.WIDTH - used);
      System.arraycopy(shelf.area, from, lanes.area, used, n);
      copy(Load.NOMINAL, lanes.nominal, from, n);
      copy(Load.WEAK, lanes.weak, from, n);
      copy(Load.STRONG, lanes.strong, from, n);
      for (int j = 0; j < n; j++) {
        slot[used + j] = from + j;
      }
      Arrays.fill(gap, used, used + n, gap(rack, travel));
      Arrays.fill(within, used, used + n, within(rack, travel));
      Arrays.fill(beyond, used, used + n, beyond(rack, travel));
      used += n;
      from += n;
      if (used == Lanes.WIDTH) {
        run(pair, region, travel);
      }
    }
  }

  private void copy(Load load, Lanes.Gas to, int from, int n) {
    Shelf.Gas gas = shelf.gas.get(load);
    System.arraycopy(gas.mass(), from, to.mass, used, n);
    System.arraycopy(gas.base(), from, to.base, used, n);
    System.arraycopy(gas.friction(), from, to.friction, used, n);
  }

  private void run(int pair, int region, Travel travel) {
    if (used == 0) {
      return;
    }
    lanes.run(used, travel, counts, shelf.fits, hands);
    for (int lane = 0; lane < used; lane++) {
      for (int c = 0; c < counts.length; c++) {
        int at = ((region * shelf.size()) + slot[lane]) * counts.length + c;
        if (shelf.there(slot[lane], c)) {
          double value = value(lane, c, travel);
          if (value < best[at]) {
            best[at] = value;
            where[at] = pair;
          }
        }
      }
    }
    used = 0;
  }

  /** Keeps the better of both; of equal ones the earlier pair. */
  void merge(Coarse other) {
    for (int at = 0; at < best.length; at++) {
      if (other.best[at] < best[at] || other.best[at] == best[at] && other.where[at] < where[at]) {
        best[at] = other.best[at];
        where[at] = other.where[at];
      }
    }
  }

  private double value(int lane, int c, Travel travel) {
    Job.Requirements asked = job.requirements();
    double open = hands[c].openWeak[lane] / travel.hand();
    double close = hands[c].closeStrong[lane] / travel.hand();
    double hand = Requirement.handMargin(asked, open, close);
    double gravity = travel.heavy()[travel.last()];
    Double hold =
        gravity < 0
            ? counts[c] * lanes.weak.last[lane] * travel.lever()[travel.last()] / -gravity
            : null;
    double push = counts[c] * lanes.strong.first[lane] * travel.lever()[0] + travel.light()[0];
    double shut =
        asked.staysShut() ? Math.max(0, push / Math.max(1e-9, Math.abs(travel.light()[0]))) : 0;
    double behaviour = misbehaves(lane, c, push, travel);
    double tooHeavy = Math.max(0, -hand);
    double falls = hold == null ? 0 : Math.max(0, asked.minHoldRatio() - hold);
    if (tooHeavy + falls + gap[lane] + shut + behaviour > 0) {
      return Aim.missed(tooHeavy, falls, gap[lane], shut, behaviour);
    }
    double margin =
        Requirement.margin(
            job,
            hand,
            hold,
            within[lane] + asked.compressedReserve(),
            beyond[lane] + asked.extendedReserve());
    return aim.place(hands[c].rms(lane, travel), margin);
  }
}
