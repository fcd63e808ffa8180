package org.staywright.web.stock;

import java.util.List;
import org.staywright.form.part.FamilyColumn;
import org.staywright.form.stock.StockColumn;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/**
 * A column of a file of stock, for the page that lists them.
 *
 * @param unit symbol, "" for none
 * @param takes what a cell may hold
 * @param families that have it, none where all do
 */
record ColumnRow(String name, String unit, String takes, String example, List<String> families) {

  static List<ColumnRow> all() {
    Wording wording = PageText.wording().metric();
    return StockColumn.ALL.stream().map(column -> of(column, wording)).toList();
  }

  private static ColumnRow of(StockColumn column, Wording wording) {
    boolean every = column.families().size() == FamilyColumn.codes().size();
    return new ColumnRow(
        column.name(),
        column.unit() == null ? "" : column.unit().symbol(),
        column.bound() == null ? column.accepted() : wording.bound(column.bound()),
        column.example(),
        every ? List.of() : column.families());
  }
}
