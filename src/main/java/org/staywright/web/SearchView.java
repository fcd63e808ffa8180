package org.staywright.web;

import java.util.List;
import java.util.Map;
import org.staywright.form.MeasuredForm;
import org.staywright.part.Measured;
import org.staywright.part.Range;
import org.staywright.wording.Wording;

/**
 * A page of what was found in the stock.
 *
 * @param pages of all that was found
 * @param rows of this page
 */
public record SearchView(Pages pages, List<PartRow> rows) {

  static SearchView of(
      MeasuredForm.Asked asked, Map<String, List<String>> typed, Range range, Wording wording) {
    Measured measured = asked.measured();
    List<Integer> found = measured.rows(range);
    Pages pages = Pages.of(found.size(), asked.page(), new Address("/parts", typed));
    return new SearchView(
        pages,
        found.subList(pages.from(), pages.to()).stream()
            .map(row -> PartRow.of(range.part(row), measured, wording))
            .toList());
  }
}
