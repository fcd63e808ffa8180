package org.staywright.fit.rank;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.staywright.fit.assess.Fit;
import org.staywright.part.Part;
import org.staywright.spring.Spring;

/**
 * A fit, and below it those farther down the order that are nearly the same: of one family, rod,
 * tube, stroke and number, as long within 2 mm, and with forces that their tolerances do not keep
 * apart. They differ in finish, lock, price or a class of force.
 *
 * @param rank from 1 in the whole order
 * @param fit the best of them
 * @param others of them, in order, with none below them
 */
public record Alike(int rank, Fit fit, List<Alike> others) {

  private static final double SAME_LENGTH = 0.002;
  private static final double SAME_SIZE = 1e-6;

  public Alike {
    others = List.copyOf(others);
  }

  /**
   * @param fits in order
   * @param most groups
   */
  public static List<Alike> of(List<Fit> fits, int most) {
    // By the place of the best of each.
    Map<Integer, List<Alike>> groups = new LinkedHashMap<>();
    for (int i = 0; i < fits.size(); i++) {
      Fit fit = fits.get(i);
      Optional<Integer> best =
          groups.keySet().stream().filter(place -> alike(fits.get(place), fit)).findFirst();
      if (best.isPresent()) {
        Objects.requireNonNull(groups.get(best.get())).add(new Alike(i + 1, fit, List.of()));
      } else if (groups.size() < most) {
        groups.put(i, new ArrayList<>());
      }
    }
    return groups.entrySet().stream()
        .map(group -> new Alike(group.getKey() + 1, fits.get(group.getKey()), group.getValue()))
        .toList();
  }

  static boolean alike(Fit one, Fit other) {
    Part a = one.part();
    Part b = other.part();
    Spring s = a.spring();
    Spring t = b.spring();
    return one.count() == other.count()
        && a.family() == b.family()
        && within(SAME_SIZE, s.rodDiameter(), t.rodDiameter())
        && within(SAME_SIZE, s.tubeDiameter(), t.tubeDiameter())
        && within(SAME_SIZE, s.stroke(), t.stroke())
        && within(SAME_LENGTH + SAME_SIZE, s.extendedLength(), t.extendedLength())
        && within(Math.max(a.forceTolerance(), b.forceTolerance()), s.force(), t.force());
  }

  private static boolean within(double apart, double one, double other) {
    return Math.abs(one - other) <= apart;
  }
}
