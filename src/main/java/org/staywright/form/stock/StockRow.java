package org.staywright.form.stock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.part.FamilyColumn;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.OfferCells;
import org.staywright.form.part.PartColumn;
import org.staywright.form.part.PartRow;
import org.staywright.form.table.Cells;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.unit.Refusal;

/**
 * A row of a file of the whole stock: a part or an end fitting, told apart by the family.
 *
 * @param part null where it is a fitting
 * @param fitting null where it is a part
 */
public record StockRow(Part part, Fitting fitting) {

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

  /**
   * Reads a row; what a part lacks is worked out.
   *
   * @param hysteresis whether friction is given as F3 − F1 rather than half of it
   * @throws Refusal with every fault found
   */
  public static StockRow read(Cells cells, boolean hysteresis) {
    if (!FamilyColumn.FITTING.equals(cells.optional("family"))) {
      return new StockRow(PartRow.complete(cells, hysteresis), null);
    }
    for (String column : COLUMNS) {
      if (!FittingRow.COLUMNS.contains(column) && !column.equals("family")) {
        cells.empty(column, FamilyColumn.FITTING);
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
    cells.put("family", FamilyColumn.FITTING);
    return COLUMNS.stream().map(column -> cells.getOrDefault(column, "")).toList();
  }
}
