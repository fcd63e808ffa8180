package org.staywright.job.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What must be ordered for chosen parts: the one source of every list that is sent or printed.
 * Prices are net.
 *
 * @param lines springs first, then what holds them
 * @param unmatched what belongs to them but is not in the range
 * @param jobs it is for
 */
public record PartsList(List<OrderLine> lines, List<Mate.Missing> unmatched, List<ListedJob> jobs) {

  public PartsList {
    lines = List.copyOf(lines);
    unmatched = List.copyOf(unmatched);
    jobs = List.copyOf(jobs);
  }

  /** Like parts of one stock revision are added up before minimum, multiple and price break. */
  public static PartsList of(List<Wanted> wanted) {
    Map<Item, Need> needs = new LinkedHashMap<>();
    List<Mate.Missing> unmatched = new ArrayList<>();
    for (Wanted one : wanted) {
      Outfit.Bill bill = one.bill();
      unmatched.addAll(bill.unmatched());
      bill.pieces().forEach((item, each) -> needs.computeIfAbsent(item, Need::new).add(one, each));
    }
    List<OrderLine> lines =
        needs.values().stream()
            .map(Need::line)
            .sorted(Comparator.comparing(line -> line.item().place()))
            .toList();
    List<ListedJob> jobs =
        wanted.stream().map(one -> new ListedJob(one, setCost(one, lines))).toList();
    return new PartsList(lines, unmatched.stream().distinct().toList(), jobs);
  }

  /** Pieces of one item over all jobs. */
  private static final class Need {

    private final Item item;
    private final List<List<Alternate>> alternates = new ArrayList<>();
    private int pieces;
    private int matched = 1;

    Need(Item item) {
      this.item = item;
    }

    void add(Wanted wanted, int each) {
      pieces += each * wanted.sets() + wanted.spares();
      if (item.part() != null) {
        matched = Math.max(matched, each);
        boolean spring = item.part().equals(wanted.outfit().part());
        alternates.add(spring ? wanted.alternates() : List.of());
      }
    }

    OrderLine line() {
      Alternate alternate = alternates.isEmpty() ? null : Alternate.common(alternates, pieces);
      return OrderLine.of(item, pieces, matched, alternate);
    }
  }

  private static BigDecimal setCost(Wanted wanted, List<OrderLine> lines) {
    Map<Item, BigDecimal> prices = new LinkedHashMap<>();
    lines.forEach(line -> prices.put(line.item(), line.unitPrice()));
    BigDecimal cost = BigDecimal.ZERO;
    for (Map.Entry<Item, Integer> piece : wanted.bill().pieces().entrySet()) {
      BigDecimal each = prices.get(piece.getKey());
      if (each == null || currency(lines) == null) {
        return null;
      }
      cost = cost.add(each.multiply(BigDecimal.valueOf(piece.getValue())));
    }
    return cost;
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
    return currency(lines);
  }

  private static String currency(List<OrderLine> lines) {
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

  /** The oldest day on which something of it was counted, null where none is known. */
  public LocalDate countedOn() {
    return lines.stream()
        .map(line -> line.item().offer().stockDate())
        .filter(Objects::nonNull)
        .min(LocalDate::compareTo)
        .orElse(null);
  }

  /** Days until all is here. */
  public int leadTimeDays() {
    return lines.stream().mapToInt(OrderLine::leadTimeDays).max().orElse(0);
  }

  /** Of all that is ordered, kg. */
  public BigDecimal mass() {
    return lines.stream().map(OrderLine::mass).reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
