package org.staywright.stock.intake;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.table.RowFault;

/**
 * What a file holds and what it would do to the range.
 *
 * @param base revision it was held against
 * @param rows below the header
 * @param accepted rows without fault
 * @param faultCount of all
 * @param faults the first of them
 * @param faultFile all of them, null where there is none
 * @param columns of the file and what they mean
 * @param preview first rows as they were understood
 * @param derived how many values of each name were worked out
 * @param change to the range
 */
public record Checked(
    int base,
    int rows,
    int accepted,
    int faultCount,
    List<RowFault> faults,
    Path faultFile,
    List<ColumnPlan.Matched> columns,
    List<Understood> preview,
    Map<String, Integer> derived,
    Change change) {

  /**
   * A row in the stock's columns and units.
   *
   * @param row of the file
   * @param values by column; what is empty is left out
   * @param derived columns that were worked out
   */
  public record Understood(int row, Map<String, String> values, List<String> derived) {}

  /** Numbers of parts and fittings that come, change and go. */
  public record Change(int added, int changed, int same, int gone) {

    public static final Change NONE = new Change(0, 0, 0, 0);
  }

  public boolean clean() {
    return faultCount == 0;
  }
}
