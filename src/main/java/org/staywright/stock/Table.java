package org.staywright.stock;

import java.util.ArrayList;
import java.util.List;
import org.staywright.part.Offer;

/**
 * A table of things on offer: its SQL, and how a row goes into it and comes out again.
 *
 * @param <T> what a row is
 */
abstract class Table<T> {

  /** Takes a revision. */
  static final String HOLDS = "? between from_revision and to_revision";

  /**
   * Takes a revision twice. By an index, which + 0 forbids, H2 would look every row up instead of
   * reading on.
   */
  static final String HOLD_MANY = "from_revision + 0 <= ? and to_revision + 0 >= ?";

  /** Takes two revisions. */
  static final String IN_ONE_OF_TWO = "(%1$s) <> (%1$s)".formatted(HOLDS);

  /** The last revision of a row that still holds. */
  private static final int OPEN = Integer.MAX_VALUE;

  private final String name;
  private final List<String> columns = new ArrayList<>();

  /**
   * @param name of the table
   * @param columns beside number, revisions and offer
   */
  Table(String name, List<String> columns) {
    this.name = name;
    this.columns.add("part_number");
    this.columns.addAll(columns);
    this.columns.addAll(OfferColumns.NAMES);
  }

  /** The rows of a condition. */
  final String rows(String condition) {
    return "select * from " + name + " where " + condition;
  }

  /** Takes the {@link #cells} of a row and the revision from which on it holds. */
  final String adding() {
    return "insert into %s (%s, from_revision) values (%s?)"
        .formatted(name, String.join(", ", columns), "?, ".repeat(columns.size()));
  }

  /** Takes the last revision in which the row of a number holds, and the number. */
  final String ending() {
    return "update %s set to_revision = ? where part_number = ? and to_revision = %d"
        .formatted(name, OPEN);
  }

  /** Takes the last revision in which rows hold, and the one since which they came. */
  final String endingAllSince() {
    return "update %s set to_revision = ? where to_revision = %d and from_revision > ?"
        .formatted(name, OPEN);
  }

  /** Takes the revision from which on rows hold again, and the one in which they held. */
  final String addingAgain() {
    String sql =
        "insert into %1$s (%2$s, from_revision) select %2$s, cast(? as integer) from %1$s"
            + " where %3$s and to_revision < %4$d";
    return sql.formatted(name, String.join(", ", columns), HOLDS, OPEN);
  }

  /** The values of these columns. */
  final List<Object> cells(T row) {
    List<Object> cells = new ArrayList<>();
    cells.add(number(row));
    cells.addAll(values(row));
    cells.addAll(OfferColumns.values(offer(row)));
    return cells;
  }

  final T made(Stored row) {
    return read(row, OfferColumns.read(row));
  }

  abstract String number(T row);

  abstract Offer offer(T row);

  /** The values of the columns given to the constructor. */
  abstract List<Object> values(T row);

  abstract T read(Stored row, Offer offer);
}
