package org.staywright.fit.replace;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Column;
import org.staywright.part.Price;
import org.staywright.part.Range;

/** Parts alike in all that was measured are one answer: nothing measured tells them apart. */
final class Groups {

  /** Groups less likely than the best by so much are nought beside it, in logarithms. */
  private static final double NOUGHT = 30;

  /**
   * One answer.
   *
   * @param rows of the range, what one would take first in front
   * @param log of the likelihood of any one of them
   */
  record Group(List<Integer> rows, double log) {}

  private final Range range;
  private final Measurements old;
  private final double[] logs;

  private Groups(Range range, Measurements old, double[] logs) {
    this.range = range;
    this.old = old;
    this.logs = logs;
  }

  /** The likeliest first, at most so many. */
  static List<Group> of(Range range, Measurements old, double[] logs, int limit) {
    return new Groups(range, old, logs).ranked(limit);
  }

  private List<Group> ranked(int limit) {
    int[] order =
        IntStream.range(0, logs.length)
            .boxed()
            .sorted(Comparator.comparingDouble(row -> -logs[row]))
            .mapToInt(Integer::intValue)
            .toArray();
    Map<List<Object>, List<Integer>> alike = new LinkedHashMap<>();
    for (int row : order) {
      boolean enough = alike.size() >= limit && logs[row] < logs[order[0]] - NOUGHT;
      if (enough) {
        break;
      }
      alike.computeIfAbsent(marks(row), fresh -> new ArrayList<>()).add(row);
    }
    return alike.values().stream()
        .map(rows -> new Group(preferred(rows), logs[rows.get(0)]))
        .sorted(Comparator.comparingDouble((Group group) -> -total(group)))
        .limit(limit)
        .toList();
  }

  /** Of all its parts together, in logarithms. */
  private static double total(Group group) {
    return group.log() + Math.log(group.rows().size());
  }

  /** What tells a part from others by what was measured. */
  private List<Object> marks(int row) {
    List<Object> marks = new ArrayList<>();
    TreeSet<Column> columns = new TreeSet<>();
    old.sizes().keySet().forEach(gauge -> columns.add(gauge.column()));
    if (old.scale() != null) {
      columns.add(Column.FORCE);
      columns.add(Column.ROD_DIAMETER);
      columns.add(Column.STROKE);
      columns.add(Column.GAS_VOLUME);
      columns.add(Column.FRICTION);
    }
    columns.forEach(column -> marks.add(range.column(column)[row]));
    if (old.throughFittings() || old.rodEnd() != null || old.tubeEnd() != null) {
      marks.add(range.ends(row));
    } else if (old.rodThread() != null) {
      marks.add(String.valueOf(range.ends(row).rod()));
    }
    if (old.finish() != null) {
      marks.add(range.finish(row));
    }
    if (old.endDamped() != null) {
      marks.add(range.column(Column.END_ZONE)[row] > 0);
    }
    if (old.family() != null) {
      marks.add(range.family(row));
    }
    return marks;
  }

  /** On the shelf in number first, then the cheapest, then by number. */
  private List<Integer> preferred(List<Integer> rows) {
    return rows.stream()
        .sorted(
            Comparator.comparing((Integer row) -> range.stock(row) < old.springCount())
                .thenComparing(this::each, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(row -> row))
        .toList();
  }

  private @Nullable BigDecimal each(int row) {
    Price price = range.offer(row).price();
    return price == null ? null : price.each(1);
  }
}
