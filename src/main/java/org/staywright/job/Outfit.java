package org.staywright.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.staywright.part.Fitting;
import org.staywright.part.Part;

/**
 * A set of springs with what holds them.
 *
 * @param part the spring
 * @param count of springs
 * @param rod fitting on each rod, null for a column, which needs none
 * @param tube fitting on each tube, likewise
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
    List<Fitting> ends = Stream.of(rod, tube).filter(Objects::nonNull).toList();
    List<Fitting> held = new ArrayList<>(ends);
    List<Mate.Missing> unmatched = new ArrayList<>();
    Mate mate = new Mate(range, brackets);
    ends.forEach(end -> mate.of(end, held, unmatched));
    Map<Item, Integer> pieces = new LinkedHashMap<>();
    pieces.put(Item.of(part, revision), count);
    held.stream()
        .sorted(Comparator.comparing(Fitting::type))
        .forEach(fitting -> pieces.merge(Item.of(fitting, revision), count, Integer::sum));
    return new Bill(pieces, unmatched);
  }
}
