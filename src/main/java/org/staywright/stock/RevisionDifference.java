package org.staywright.stock;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.form.stock.StockRow;

/**
 * How one revision differs from another: the numbers of all, and the first of each by name.
 *
 * @param from revision
 * @param to revision
 * @param added numbers that only the second has
 * @param changed rows with other values
 * @param gone numbers that only the first has
 */
public record RevisionDifference(
    int from, int to, Listed<String> added, Listed<Changed> changed, Listed<String> gone) {

  /**
   * @param count of all
   * @param first of them, or those of the page asked for
   */
  public record Listed<T>(int count, List<T> first) {}

  /** A part or fitting with other values. */
  public record Changed(String partNumber, List<Cell> values) {}

  /** One value before and after, as in a file. */
  public record Cell(String column, @Nullable String before, @Nullable String after) {}

  /** Takes rows that only one revision has, those of a number one after the other. */
  static final class Builder {

    private final int from;
    private final int to;
    private final int skipped;
    private final int most;
    private final List<String> added = new ArrayList<>();
    private final List<Changed> changed = new ArrayList<>();
    private final List<String> gone = new ArrayList<>();
    private int addedCount;
    private int changedCount;
    private int goneCount;
    private StockRow waiting;
    private boolean waitingIsOld;

    /**
     * @param skipped of each kind
     * @param most listed of each kind after those
     */
    Builder(int from, int to, int skipped, int most) {
      this.from = from;
      this.to = to;
      this.skipped = skipped;
      this.most = most;
    }

    void add(StockRow row, boolean old) {
      if (waiting != null && waiting.number().equals(row.number())) {
        pair(old ? row : waiting, old ? waiting : row);
        waiting = null;
        return;
      }
      flush();
      waiting = row;
      waitingIsOld = old;
    }

    private void pair(StockRow before, StockRow after) {
      List<String> old = before.cells();
      List<String> fresh = after.cells();
      List<Cell> cells = new ArrayList<>();
      for (int i = 0; i < old.size(); i++) {
        if (!old.get(i).equals(fresh.get(i))) {
          cells.add(new Cell(StockRow.COLUMNS.get(i), old.get(i), fresh.get(i)));
        }
      }
      if (!cells.isEmpty() && listed(++changedCount)) {
        changed.add(new Changed(after.number(), cells));
      }
    }

    /** Nothing more comes for the number that waits. */
    void flush() {
      if (waiting == null) {
        return;
      }
      if (waitingIsOld && listed(++goneCount)) {
        gone.add(waiting.number());
      } else if (!waitingIsOld && listed(++addedCount)) {
        added.add(waiting.number());
      }
      waiting = null;
    }

    private boolean listed(int place) {
      return place > skipped && place <= skipped + most;
    }

    RevisionDifference build() {
      flush();
      return new RevisionDifference(
          from,
          to,
          new Listed<>(addedCount, List.copyOf(added)),
          new Listed<>(changedCount, List.copyOf(changed)),
          new Listed<>(goneCount, List.copyOf(gone)));
    }
  }
}
