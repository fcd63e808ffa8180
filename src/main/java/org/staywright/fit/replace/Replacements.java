package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.replace.Groups.Group;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * What of the range an old spring may be, or may be replaced by: the likeliest first.
 *
 * <p>Bayes' rule with every part number as likely as any other before anything is measured, and a
 * small share left for a spring that is none of the range.
 *
 * @param found the likeliest first
 * @param outside likelihood that the old spring is none of the range
 * @param suspects readings each of which, left out, would let a part match; none where one matches
 */
public record Replacements(List<Replacement> found, double outside, List<Gauge> suspects) {

  public Replacements {
    found = List.copyOf(found);
    suspects = List.copyOf(suspects);
  }

  /**
   * @param limit most answers returned
   */
  public static Replacements of(Range range, Measurements old, int limit) {
    Ends ends = new Ends(range, old);
    double[] logs = Likelihoods.of(range, old, ends);
    double evidence = evidence(logs, old);
    List<Replacement> found = new ArrayList<>();
    for (Group group : Groups.of(range, old, logs, limit)) {
      double likelihood = Math.exp(group.log() - evidence) * group.rows().size() * prior(logs);
      found.add(replacement(range, old, ends, group, likelihood));
    }
    double outside = outside(old, evidence);
    return new Replacements(found, outside, outside > 0.5 ? suspects(range, old) : List.of());
  }

  /** True where a spring that is none of the range explains the readings better than all parts. */
  public boolean matchesNothing() {
    return outside > 0.5;
  }

  private static double prior(double[] logs) {
    return (1 - Outside.PRIOR) / logs.length;
  }

  private static double outside(Measurements old, double evidence) {
    return Outside.PRIOR * Math.exp(Outside.log(old) - evidence);
  }

  /** Logarithm of the likelihood of the readings, whatever the old spring is. */
  private static double evidence(double[] logs, Measurements old) {
    double most = Outside.log(old);
    for (double log : logs) {
      most = Math.max(most, log);
    }
    double sum = 0;
    for (double log : logs) {
      sum += Math.exp(log - most);
    }
    double all = Outside.PRIOR * Math.exp(Outside.log(old) - most);
    return most + Math.log(logs.length == 0 ? all : all + sum * prior(logs));
  }

  private static Replacement replacement(
      Range range, Measurements old, Ends ends, Group group, double likelihood) {
    int row = group.rows().get(0);
    Part part = range.part(row);
    // Where readings do not tell the pairs apart, the first is the usual and cheapest one.
    Through readings = new Through(range, old);
    Ends.Pair pair =
        ends.of(row).pairs().stream()
            .max(
                Comparator.comparingDouble(
                    each -> Math.rint(1e6 * (each.log() + readings.log(row, each.reach())))))
            .orElse(null);
    Comparison comparison =
        Comparison.of(
            old, part, pair == null ? null : pair.rod(), pair == null ? null : pair.tube());
    return new Replacement(
        part,
        Math.min(1, likelihood),
        group.rows().stream().skip(1).map(range::number).sorted().toList(),
        comparison.kind(),
        comparison.differences(),
        pair == null ? null : pair.rod(),
        pair == null ? null : pair.tube());
  }

  /** Each reading left out in turn. */
  private static List<Gauge> suspects(Range range, Measurements old) {
    List<Gauge> suspects = new ArrayList<>();
    if (old.sizes().size() < 2) {
      return suspects;
    }
    for (Gauge gauge : Gauge.values()) {
      if (old.size(gauge) != null) {
        Map<Gauge, Reading> others = new EnumMap<>(old.sizes());
        others.remove(gauge);
        Measurements rest = old.with(others);
        double[] logs = Likelihoods.of(range, rest, new Ends(range, rest));
        if (outside(rest, evidence(logs, rest)) < 0.5) {
          suspects.add(gauge);
        }
      }
    }
    return suspects;
  }
}
