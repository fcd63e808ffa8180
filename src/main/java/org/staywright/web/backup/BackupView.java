package org.staywright.web.backup;

import java.util.List;
import org.staywright.backup.Contents;
import org.staywright.web.shell.PageText;
import org.staywright.web.stock.StockView;

/**
 * A backup that has been checked, beside what it would replace.
 *
 * @param id under which its file is kept
 */
record BackupView(String id, String created, List<Row> rows) {

  private static final List<String> SHOWN =
      List.of("stock_revision", "part", "fitting", "job", "batch");

  /** Numbers of rows of one table. */
  record Row(String what, String there, String here) {}

  static BackupView of(String id, Contents there, Contents here) {
    List<Row> rows =
        SHOWN.stream()
            .map(
                table ->
                    new Row(
                        PageText.text("backup.rows." + table),
                        number(there.rows().get(table)),
                        number(here.rows().get(table))))
            .toList();
    return new BackupView(id, StockView.TIME.format(there.created()), rows);
  }

  private static String number(long rows) {
    return PageText.wording().number((double) rows, 0);
  }
}
