package org.staywright.part;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.KthSelector;
import org.jspecify.annotations.Nullable;

/**
 * What a search finds: how many, and one page of them in order. Of a million rows only those of the
 * page are ever sorted.
 *
 * @param total found
 * @param rows of the page
 */
public record Selection(int total, List<Integer> rows) {

  /**
   * @param size of the range
   * @param matches which rows are found
   * @param key rising order, ties by row; null for the order of the rows
   * @param from how many come before the page
   * @param most on the page
   */
  static Selection of(
      int size, IntPredicate matches, @Nullable IntToDoubleFunction key, int from, int most) {
    int[] found = IntStream.range(0, size).parallel().filter(matches).toArray();
    int first = Math.min(from, found.length);
    int last = (int) Math.min(found.length, (long) first + most);
    List<Integer> page =
        first == last
            ? List.of()
            : key == null
                ? Arrays.stream(found, first, last).boxed().toList()
                : page(found, key, first, last);
    return new Selection(found.length, page);
  }

  /** The rows from one place to another in order: those between the keys at either end. */
  private static List<Integer> page(int[] found, IntToDoubleFunction key, int first, int last) {
    double[] keys = Arrays.stream(found).parallel().mapToDouble(key).map(Selection::last).toArray();
    KthSelector selector = new KthSelector();
    double low = selector.select(keys.clone(), null, first);
    double high = selector.select(keys.clone(), null, last - 1);
    int before = (int) Arrays.stream(keys).filter(each -> each < low).count();
    return IntStream.range(0, found.length)
        .filter(i -> low <= keys[i] && keys[i] <= high)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> keys[i]))
        .skip(first - before)
        .limit(last - first)
        .map(i -> found[i])
        .toList();
  }

  /** What has no key comes last. */
  private static double last(double key) {
    return Double.isNaN(key) ? Double.POSITIVE_INFINITY : key;
  }
}
