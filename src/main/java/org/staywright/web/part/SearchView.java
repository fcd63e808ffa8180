package org.staywright.web.part;

import java.util.List;
import java.util.Map;
import org.staywright.form.replace.MeasuredForm;
import org.staywright.part.MeasuredSpring;
import org.staywright.part.Range;
import org.staywright.part.Selection;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.Pages;
import org.staywright.wording.Wording;

/**
 * A page of what was found in the stock.
 *
 * @param pages of all that was found
 * @param rows of this page
 */
public record SearchView(Pages pages, List<FoundPart> rows) {

  static SearchView of(
      MeasuredForm.Asked asked, Map<String, List<String>> typed, Range range, Wording wording) {
    MeasuredSpring measured = asked.measured();
    Selection found = measured.rows(range, (asked.page() - 1) * Pages.SIZE, Pages.SIZE);
    Pages pages = Pages.of(found.total(), asked.page(), new Address("/parts", typed));
    if (pages.page() < asked.page()) {
      found = measured.rows(range, pages.from(), Pages.SIZE);
    }
    return new SearchView(
        pages,
        found.rows().stream()
            .map(row -> FoundPart.of(range.part(row), measured, wording))
            .toList());
  }
}
