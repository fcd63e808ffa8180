package org.staywright.fit.mounts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SetPrice;

/**
 * Where the refinement of a candidate begins.
 *
 * @param row of the range
 * @param count of springs
 * @param share of the free coordinates
 */
record Start(int row, int count, double[] share) {

  private static final int BEST = 20;
  private static final int ALL = 32;
  private static final int CHEAP = 8;

  /** About as many are picked at most. */
  static final int MOST = ALL + CHEAP;

  /** Starts of one part and number, and of one length and number in one region. */
  private static final int ALIKE = 2;

  /** A miss that a better place near by may well make good. */
  private static final double SLIGHT = Objective.missed(0.15);

  /** A candidate in a region: its place in the arrays, and how it stands there. */
  private record Entry(int at, double value) {}

  /** The most promising of what was looked at, no more than a few of a kind. */
  public static List<Start> of(
      Job job, UsableParts shelf, SobolPoints spread, CoarseSearch looked) {
    return new Picker(job, shelf, spread, looked).picked();
  }

  private static final class Picker {
    private final Job job;
    private final UsableParts shelf;
    private final SobolPoints spread;
    private final CoarseSearch looked;
    private final Objective aim;
    private final int counts;
    private final int[] rackOf;
    private final Map<Integer, Integer> ofCandidate = new HashMap<>();
    private final Map<List<Integer>, Integer> ofKind = new HashMap<>();
    private final List<Start> picked = new ArrayList<>();

    Picker(Job job, UsableParts shelf, SobolPoints spread, CoarseSearch looked) {
      this.job = job;
      this.shelf = shelf;
      this.spread = spread;
      this.looked = looked;
      aim = new Objective(job, Criteria.of(job));
      counts = job.springCounts().size();
      rackOf = new int[shelf.size()];
      for (int i = 0; i < shelf.racks.size(); i++) {
        UsableParts.Rack rack = shelf.racks.get(i);
        Arrays.fill(rackOf, rack.from(), rack.to(), i);
      }
    }

    List<Start> picked() {
      double cheapest =
          IntStream.range(0, looked.best.length)
              .filter(at -> looked.best[at] < Objective.MISSED)
              .mapToObj(at -> price(at).amount())
              .filter(amount -> amount != null)
              .mapToDouble(BigDecimal::doubleValue)
              .min()
              .orElse(0);
      List<Entry> entries =
          IntStream.range(0, looked.best.length)
              .filter(at -> looked.best[at] < Objective.OUT)
              .mapToObj(at -> new Entry(at, looked.best[at] + part(at, cheapest)))
              .sorted(Comparator.comparingDouble(Entry::value).thenComparingInt(Entry::at))
              .toList();
      pick(entries, BEST);
      for (int region = 0; region < spread.regions(); region++) {
        int here = region;
        pick(entries.stream().filter(e -> region(e.at()) == here).toList(), picked.size() + 1);
      }
      pick(entries, ALL);
      pick(
          entries.stream()
              .filter(e -> looked.best[e.at()] >= Objective.MISSED && looked.best[e.at()] < SLIGHT)
              .sorted(
                  Comparator.comparingDouble((Entry e) -> part(e.at(), cheapest))
                      .thenComparingDouble(Entry::value)
                      .thenComparingInt(Entry::at))
              .toList(),
          picked.size() + CHEAP);
      return picked;
    }

    /** Adds the first of the entries that are not too much alike until there are so many. */
    private void pick(List<Entry> entries, int until) {
      for (Entry entry : entries) {
        if (picked.size() >= until) {
          return;
        }
        int candidate = entry.at() % (shelf.size() * counts);
        List<Integer> kind =
            List.of(region(entry.at()), rackOf[candidate / counts], candidate % counts);
        if (ofCandidate.getOrDefault(candidate, 0) < ALIKE
            && ofKind.getOrDefault(kind, 0) < ALIKE) {
          ofCandidate.merge(candidate, 1, Integer::sum);
          ofKind.merge(kind, 1, Integer::sum);
          picked.add(
              new Start(
                  shelf.row[candidate / counts],
                  job.springCounts().get(candidate % counts),
                  spread.point(looked.where[entry.at()])));
        }
      }
    }

    private int region(int at) {
      return at / (shelf.size() * counts);
    }

    private SetPrice price(int at) {
      int candidate = at % (shelf.size() * counts);
      return shelf.prices[candidate % counts][candidate / counts];
    }

    private double part(int at, double cheapest) {
      return aim.part(
          job.springCounts().get(at % counts), price(at).amount(), price(at).days(), cheapest);
    }
  }
}
