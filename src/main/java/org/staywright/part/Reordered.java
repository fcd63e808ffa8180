package org.staywright.part;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Columns with their rows in another order. */
final class Reordered {

  private Reordered() {}

  static double[] of(double[] values, int[] order) {
    return Arrays.stream(order).mapToDouble(row -> values[row]).toArray();
  }

  static int[] of(int[] values, int[] order) {
    return Arrays.stream(order).map(row -> values[row]).toArray();
  }

  static <T> T[] of(T[] values, int[] order) {
    T[] reordered = Arrays.copyOf(values, order.length);
    Arrays.setAll(reordered, i -> values[order[i]]);
    return reordered;
  }

  /** Places of the first so many values in rising order. */
  static int[] rising(String[] values, int count) {
    return IntStream.range(0, count)
        .boxed()
        .parallel()
        .sorted((one, other) -> values[one].compareTo(values[other]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
