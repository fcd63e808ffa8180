package org.staywright.job.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.staywright.fit.job.Beside;
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
 * @param beside parts that act along with the springs
 */
public record Outfit(
    Part part, int count, Fitting rod, Fitting tube, boolean brackets, List<Beside> beside) {

  /** Springs alone. */
  public Outfit(Part part, int count, Fitting rod, Fitting tube, boolean brackets) {
    this(part, count, rod, tube, brackets, List.of());
  }

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
    Map<Item, Integer> pieces = new LinkedHashMap<>();
    List<Mate.Missing> unmatched = new ArrayList<>();
    Mate mate = new Mate(range, brackets);
    pieces.put(Item.of(part, revision), count);
    hold(mate, count, Stream.of(rod, tube), pieces, unmatched, revision);
    for (Beside each : beside) {
      pieces.merge(Item.of(each.part(), revision), each.count(), Integer::sum);
      Stream<Fitting> ends = Stream.of(each.rod(), each.tube());
      hold(mate, each.count(), ends, pieces, unmatched, revision);
    }
    return new Bill(pieces, unmatched);
  }

  /** End fittings with all that they are mated with, for so many springs. */
  private static void hold(
      Mate mate,
      int count,
      Stream<Fitting> fittings,
      Map<Item, Integer> pieces,
      List<Mate.Missing> unmatched,
      int revision) {
    List<Fitting> ends = fittings.filter(Objects::nonNull).toList();
    List<Fitting> held = new ArrayList<>(ends);
    ends.forEach(end -> mate.of(end, held, unmatched));
    held.stream()
        .sorted(Comparator.comparing(Fitting::type))
        .forEach(fitting -> pieces.merge(Item.of(fitting, revision), count, Integer::sum));
  }
}
