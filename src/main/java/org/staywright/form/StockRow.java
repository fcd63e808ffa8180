package org.staywright.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * A row of a file of the whole stock: a part or an end fitting, told apart by the family.
 *
 * @param part null where it is a fitting
 * @param fitting null where it is a part
 */
public record StockRow(Part part, Fitting fitting) {

  /** What stands in the column of families for end fittings and brackets. */
  public static final String FITTING = "fitting";

  /** Header of a file of the whole stock, as it is written. */
  public static final List<String> COLUMNS = columns();

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(PartRow.COLUMNS);
    columns.removeAll(OfferCells.COLUMNS);
    columns.add(columns.indexOf("finish"), "type");
    columns.add(columns.indexOf("tube_thread") + 1, "thread");
    FittingRow.COLUMNS.stream()
        .filter(column -> !columns.contains(column) && !OfferCells.COLUMNS.contains(column))
        .forEach(columns::add);
    columns.addAll(OfferCells.COLUMNS);
    columns.add("derived");
    return List.copyOf(columns);
  }

  /** What may stand in the column of families. */
  public static List<String> families() {
    return Stream.concat(Arrays.stream(Family.values()).map(Family::code), Stream.of(FITTING))
        .toList();
  }

  /**
   * Reads a row; what a part lacks is worked out.
   *
   * @param hysteresis whether friction is given as F3 − F1 rather than half of it
   * @throws Refusal with every fault found
   */
  public static StockRow read(Cells cells, boolean hysteresis) {
    if (!FITTING.equals(cells.optional("family"))) {
      return new StockRow(PartRow.complete(cells, hysteresis), null);
    }
    for (String column : COLUMNS) {
      if (!FittingRow.COLUMNS.contains(column) && !column.equals("family")) {
        cells.empty(column, FITTING);
      }
    }
    return new StockRow(null, FittingRow.read(cells));
  }

  public String number() {
    return part == null ? fitting.number() : part.number();
  }

  /** Columns of what was worked out rather than given. */
  public List<String> derivedColumns() {
    return part == null
        ? List.of()
        : Arrays.stream(PartColumn.values())
            .filter(column -> part.derived().contains(column.field()))
            .map(PartColumn::column)
            .toList();
  }

  /** The cells in the order of {@link #COLUMNS}. */
  public List<String> cells() {
    if (part != null) {
      return PartRow.of(part).cells(COLUMNS);
    }
    Map<String, String> cells = new HashMap<>();
    List<String> own = FittingRow.of(fitting).cells();
    for (int i = 0; i < own.size(); i++) {
      cells.put(FittingRow.COLUMNS.get(i), own.get(i));
    }
    cells.put("family", FITTING);
    return COLUMNS.stream().map(column -> cells.getOrDefault(column, "")).toList();
  }

  /** What the file says was worked out before, and what is now. */
  static List<String> derived(Cells cells, Completion completion) {
    Set<String> derived = new LinkedHashSet<>();
    String before = cells.optional("derived", 1000);
    if (before != null) {
      List<String> known = completion.numbers().keySet().stream().map(PartColumn::field).toList();
      for (String name : before.split("\\s+")) {
        if (known.contains(name)) {
          derived.add(name);
        } else {
          cells.fault(new Fault("derived", name, String.join(" ", known), "not-a-choice"));
        }
      }
    }
    derived.addAll(completion.derived());
    return List.copyOf(derived);
  }
}
