package org.staywright.form.table;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Function;

/**
 * One page of a list.
 *
 * @param total entries of the whole list
 * @param page from 0
 * @param size entries of a page at most
 * @param items those of this page
 */
public record Page<T>(long total, int page, int size, List<T> items) {

  /** Which page a query asks for. */
  public record Asked(int page, int size) {

    public static Asked of(JsonNode query) {
      return new Asked(query.get("page").intValue(), query.get("size").intValue());
    }

    /** That page of a whole list. */
    public <R, T> Page<T> of(List<R> all, Function<R, T> item) {
      long from = Math.min(all.size(), (long) page * size);
      long to = Math.min(all.size(), from + size);
      return of(all.size(), all.subList((int) from, (int) to), item);
    }

    /** That page, cut out already. */
    public <R, T> Page<T> of(long total, List<R> rows, Function<R, T> item) {
      return new Page<>(total, page, size, rows.stream().map(item).toList());
    }
  }
}
