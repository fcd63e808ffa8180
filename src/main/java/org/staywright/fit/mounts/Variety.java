package org.staywright.fit.mounts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Candidate;
import org.staywright.fit.rank.Standing;
import org.staywright.mechanism.Point;
import org.staywright.part.Range;
import org.staywright.spring.Spring;

/** Orders what a search has found, and keeps of it a handful that truly differ. */
final class Variety {

  static final int MOST = 8;
  private static final int FEWEST = 3;

  /** Mounts that both moved by less than this share of their zones are in the same place. */
  private static final double[] SAME_PLACE = {0.2, 0.1, 0.03, 0};

  /** Places of one part. */
  private static final int OF_ONE_PART = 2;

  private final Job job;
  private final Zones zones;
  private final Criteria criteria;
  private Standing standing;

  Variety(Job job, Zones zones) {
    this.job = job;
    this.zones = zones;
    criteria = Criteria.of(job);
    standing = new Standing(job, List.of(), List.of());
  }

  /** What fits in the order of the job, then what misses, least first. */
  List<PlacedCandidate> ordered(List<PlacedCandidate> places) {
    IdentityHashMap<PlacedCandidate, Candidate> candidates = new IdentityHashMap<>();
    places.stream()
        .filter(PlacedCandidate::fits)
        .forEach(
            place -> candidates.put(place, Candidate.of(criteria, place.row(), place.judged())));
    standing = new Standing(job, List.copyOf(candidates.values()), List.of());
    List<PlacedCandidate> all =
        new ArrayList<>(
            candidates.keySet().stream()
                .sorted(
                    Comparator.<PlacedCandidate, Candidate>comparing(
                            candidates::get, standing.order())
                        .thenComparingDouble(PlacedCandidate::value)
                        .thenComparing(Variety::coordinates))
                .toList());
    places.stream()
        .filter(place -> !place.fits() && place.fit() != null)
        .sorted(
            Comparator.comparingDouble(PlacedCandidate::value)
                .thenComparingInt(PlacedCandidate::row)
                .thenComparingInt(PlacedCandidate::count))
        .forEach(all::add);
    return all;
  }

  private static String coordinates(PlacedCandidate place) {
    return place.mounts().toString();
  }

  /** The first of these that differ from all before them. */
  List<PlacedCandidate> picked(List<PlacedCandidate> ordered, int most) {
    List<PlacedCandidate> picked = List.of();
    for (double same : SAME_PLACE) {
      picked = picked(ordered, most, same);
      if (picked.size() >= FEWEST) {
        break;
      }
    }
    return picked;
  }

  private List<PlacedCandidate> picked(List<PlacedCandidate> ordered, int most, double same) {
    List<PlacedCandidate> picked = new ArrayList<>();
    for (PlacedCandidate place : ordered) {
      boolean other =
          picked.stream().noneMatch(before -> alike(before, place, same))
              && picked.stream().filter(before -> before.row() == place.row()).count()
                  < OF_ONE_PART;
      if (other && picked.size() < most) {
        picked.add(place);
      }
    }
    return picked;
  }

  private boolean alike(PlacedCandidate one, PlacedCandidate other, double same) {
    boolean here =
        near(one.mounts().frame(), other.mounts().frame(), zones.frame(), same)
            && near(one.mounts().moving(), other.mounts().moving(), zones.moving(), same);
    if (!here || one.count() != other.count()) {
      return false;
    }
    Spring first = one.judged().part().spring();
    Spring second = other.judged().part().spring();
    // At the very same place another force class is another arrangement; else another size is.
    return one.row() == other.row()
        || same > 0
            && first.rodDiameter() == second.rodDiameter()
            && first.stroke() == second.stroke();
  }

  /** Not so near where the hinge lies between them: the spring works on its other side. */
  private static boolean near(Point one, Point other, Zone zone, double same) {
    boolean oneSide = one.x() * other.x() >= 0 || one.y() * other.y() >= 0;
    return oneSide && one.minus(other).distance() <= same * zone.diagonal();
  }

  /** As arrangements, scored among each other. */
  List<Arrangement> arranged(Range range, List<PlacedCandidate> places) {
    return places.stream()
        .map(
            place -> {
              Job there = job.at(place.mounts());
              Fit fit =
                  place
                      .judged()
                      .scored(standing.score(Candidate.of(criteria, place.row(), place.judged())));
              return new Arrangement(
                  place.mounts(),
                  fit,
                  FitCurve.of(there, fit),
                  Sensitivity.of(there, range, place.mounts(), fit));
            })
        .toList();
  }
}
