package org.staywright.stock.intake;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.Rows;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * A row of a file by itself, before it is held against others.
 *
 * @param number of the row in the file
 * @param cells as they stand there
 * @param sound null where anything is wrong
 * @param faults what is
 */
public record CheckedRow(int number, List<String> cells, StockRow sound, List<Fault> faults) {

  public static CheckedRow of(Rows.Row row, ColumnPlan plan, boolean hysteresis) {
    List<String> cells = row.cells();
    List<Fault> faults = new ArrayList<>(row.faults(plan.read()));
    if (!faults.isEmpty()) {
      return new CheckedRow(row.number(), cells, null, faults);
    }
    try {
      StockRow sound = StockRow.read(plan.cells(cells), hysteresis);
      return new CheckedRow(row.number(), cells, sound, faults);
    } catch (Refusal refusal) {
      refusal.faults().forEach(fault -> faults.add(plan.asInFile(fault, cells)));
      return new CheckedRow(row.number(), cells, null, faults);
    }
  }

  /** As it was understood: in the stock's columns and units, with what was worked out. */
  Checked.Understood understood(ColumnPlan plan) {
    if (sound == null) {
      return new Checked.Understood(number, plan.texts(cells), List.of());
    }
    Map<String, String> texts = new LinkedHashMap<>();
    List<String> row = sound.cells();
    for (int i = 0; i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        texts.put(StockRow.COLUMNS.get(i), row.get(i));
      }
    }
    texts.remove("derived");
    return new Checked.Understood(number, texts, sound.derivedColumns());
  }
}
