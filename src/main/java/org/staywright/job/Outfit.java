package org.staywright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.part.Fitting;
import org.staywright.part.Part;

/**
 * A set of springs with what holds them.
 *
 * @param part the spring
 * @param count of springs
 * @param rod fitting on each rod
 * @param tube fitting on each tube
 * @param brackets whether plates take the place of studs
 */
public record Outfit(Part part, int count, Fitting rod, Fitting tube, boolean brackets) {

  /**
   * What one set is made of.
   *
   * @param pieces of each, in order of mounting
   * @param unmatched what belongs to it but is not in the range
   */
  record Bill(Map<Item, Integer> pieces, List<Mate.Missing> unmatched) {}

  /**
   * @param range of fittings that studs, clips and brackets are taken from
   * @param revision of that range
   */
  Bill bill(List<Fitting> range, int revision) {
    List<Fitting> held = new ArrayList<>(List.of(rod, tube));
    List<Mate.Missing> unmatched = new ArrayList<>();
    Mate mate = new Mate(range, brackets);
    mate.of(rod, held, unmatched);
    mate.of(tube, held, unmatched);
    Map<Item, Integer> pieces = new LinkedHashMap<>();
    pieces.put(Item.of(part, revision), count);
    held.stream()
        .sorted(Comparator.comparing(Fitting::type))
        .forEach(fitting -> pieces.merge(Item.of(fitting, revision), count, Integer::sum));
    return new Bill(pieces, unmatched);
  }
}
