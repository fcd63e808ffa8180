package org.staywright.web.api;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.stock.intake.Checked;
import org.staywright.stock.intake.Imports;
import org.staywright.wording.Wording;

/**
 * What came of a file.
 *
 * @param revision made of it, null for none
 * @param rows below the header
 * @param accepted rows without fault
 * @param faults the first of them
 * @param faultsFile where all of them stand, null where there is none
 * @param derived how many values of each name were worked out
 * @param preview first rows as they were understood
 */
public record ImportAnswer(
    String id,
    @Nullable Integer revision,
    int rows,
    int accepted,
    int added,
    int changed,
    int unchanged,
    int gone,
    int faultCount,
    List<RowFaultAnswer> faults,
    @Nullable String faultsFile,
    Map<String, Integer> derived,
    List<ColumnAnswer> columns,
    List<Checked.Understood> preview) {

  /**
   * A header of the file and the column it is taken for.
   *
   * @param unknown whether it is left out because nothing is known by that name
   */
  public record ColumnAnswer(
      String header, @Nullable String column, @Nullable String unit, boolean unknown) {

    private static ColumnAnswer of(ColumnPlan.Matched matched) {
      ColumnPlan.Meaning meaning = matched.meaning();
      return new ColumnAnswer(
          matched.header(),
          meaning == null ? null : meaning.column().name(),
          meaning == null || meaning.unit() == null ? null : meaning.unit().symbol(),
          matched.unknown());
    }
  }

  static ImportAnswer of(Imports.Outcome outcome, Wording wording) {
    Checked checked = outcome.checked();
    return new ImportAnswer(
        outcome.id(),
        outcome.revision() == 0 ? null : outcome.revision(),
        checked.rows(),
        checked.accepted(),
        checked.change().added(),
        checked.change().changed(),
        checked.change().same(),
        checked.change().gone(),
        checked.faultCount(),
        RowFaultAnswer.all(checked.faults(), wording),
        checked.clean() ? null : "/api/v1/stock/imports/" + outcome.id() + "/faults.csv",
        checked.derived(),
        checked.columns().stream().map(ColumnAnswer::of).toList(),
        checked.preview());
  }
}
