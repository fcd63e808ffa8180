package org.staywright.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.staywright.part.Fitting;
import org.staywright.part.Part;

/**
 * What must be ordered for a chosen part. Prices are net.
 *
 * @param lines in order of mounting
 * @param unmatched what belongs to it but is not in the range
 */
public record PartsList(List<OrderLine> lines, List<Mate.Missing> unmatched) {

  /**
   * A set of springs with what holds them.
   *
   * @param part the spring
   * @param count of springs
   * @param rod fitting on each rod
   * @param tube fitting on each tube
   * @param brackets whether plates take the place of studs
   */
  public record Outfit(Part part, int count, Fitting rod, Fitting tube, boolean brackets) {}

  public PartsList {
    lines = List.copyOf(lines);
    unmatched = List.copyOf(unmatched);
  }

  /**
   * @param outfit one set
   * @param sets wanted
   * @param spares of each line beyond the sets
   * @param range of fittings that studs, clips and brackets are taken from
   */
  public static PartsList of(Outfit outfit, int sets, int spares, List<Fitting> range) {
    List<Fitting> held = new ArrayList<>();
    List<Mate.Missing> unmatched = new ArrayList<>();
    held.add(outfit.rod());
    held.add(outfit.tube());
    Mate mate = new Mate(range, outfit.brackets());
    mate.of(outfit.rod(), held, unmatched);
    mate.of(outfit.tube(), held, unmatched);

    List<OrderLine> lines = new ArrayList<>();
    lines.add(OrderLine.of(Item.of(outfit.part()), outfit.count() * sets + spares));
    held.stream()
        .distinct()
        .sorted(Comparator.comparing(Fitting::type))
        .forEach(
            fitting -> {
              int each = Collections.frequency(held, fitting) * outfit.count();
              lines.add(OrderLine.of(Item.of(fitting), each * sets + spares));
            });
    return new PartsList(lines, unmatched.stream().distinct().toList());
  }

  /** Net sum, null where a price is missing or currencies differ. */
  public BigDecimal total() {
    boolean complete = lines.stream().allMatch(line -> line.total() != null);
    return complete && currency() != null
        ? lines.stream().map(OrderLine::total).reduce(BigDecimal.ZERO, BigDecimal::add)
        : null;
  }

  /** Of every line, null where they differ or none is known. */
  public String currency() {
    Set<String> currencies =
        lines.stream()
            .map(line -> line.item().offer().price())
            .filter(Objects::nonNull)
            .map(price -> price.currency())
            .collect(Collectors.toSet());
    return currencies.size() == 1 ? currencies.iterator().next() : null;
  }

  /** Last day on which every price holds, null where none is known. */
  public LocalDate validUntil() {
    return lines.stream()
        .map(line -> line.item().offer().price())
        .filter(price -> price != null && price.validUntil() != null)
        .map(price -> price.validUntil())
        .min(LocalDate::compareTo)
        .orElse(null);
  }

  /** Days until all is here. */
  public int leadTimeDays() {
    return lines.stream().mapToInt(OrderLine::leadTimeDays).max().orElse(0);
  }
}
