package org.staywright.web;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.staywright.form.MeasuredForm;
import org.staywright.part.Measured;
import org.staywright.part.Range;
import org.staywright.wording.Wording;

/**
 * A page of what was found in the stock.
 *
 * @param total found
 * @param page from 1
 * @param pages in all
 * @param rows of this page
 * @param before address of the page before, "" for none
 * @param after address of the page after, "" for none
 */
public record SearchView(
    int total, int page, int pages, List<PartRow> rows, String before, String after) {

  private static final int SIZE = 25;

  static SearchView of(
      MeasuredForm.Asked asked, Map<String, List<String>> typed, Range range, Wording wording) {
    Measured measured = asked.measured();
    List<Integer> found = measured.rows(range);
    int pages = Math.max(1, (found.size() + SIZE - 1) / SIZE);
    int page = Math.min(asked.page(), pages);
    Address address = new Address("/parts", typed);
    return new SearchView(
        found.size(),
        page,
        pages,
        IntStream.range((page - 1) * SIZE, Math.min(page * SIZE, found.size()))
            .mapToObj(i -> PartRow.of(range.part(found.get(i)), measured, wording))
            .toList(),
        page > 1 ? address.with("page", page - 1).toString() : "",
        page < pages ? address.with("page", page + 1).toString() : "");
  }
}
