package org.staywright.web.shell;

/**
 * One page of a long list, and the way to its neighbours.
 *
 * @param total in the list
 * @param page from 1
 * @param pages in all
 * @param before address of the page before, "" for none
 * @param after address of the page after, "" for none
 */
public record Pages(int total, int page, int pages, String before, String after) {

  public static final int SIZE = 25;

  /**
   * @param asked page, the last one where it is beyond
   * @param list its address
   */
  public static Pages of(int total, int asked, Address list) {
    int pages = Math.max(1, (total + SIZE - 1) / SIZE);
    int page = Math.max(1, Math.min(asked, pages));
    return new Pages(
        total,
        page,
        pages,
        page > 1 ? list.with("page", page - 1).toString() : "",
        page < pages ? list.with("page", page + 1).toString() : "");
  }

  /** A page as it stands in an address: the first for whatever is no number of a page. */
  public static int asked(String page) {
    return page.matches("[1-9][0-9]{0,5}") ? Integer.parseInt(page) : 1;
  }

  /** The first of this page. */
  public int from() {
    return (page - 1) * SIZE;
  }

  /** Behind the last of this page. */
  public int to() {
    return Math.min(page * SIZE, total);
  }
}
