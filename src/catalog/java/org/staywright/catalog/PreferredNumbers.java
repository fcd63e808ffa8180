package org.staywright.catalog;

import java.util.List;
import java.util.stream.DoubleStream;
import org.staywright.form.table.NumberColumn;

/** The basic series of ISO 3 over a span of decades, read from {@code shared/}. */
final class PreferredNumbers {

  private PreferredNumbers() {}

  /** The numbers of a series ("R10", "R20") in a span, rising. */
  static double[] of(String series, SpringSize.Span span) {
    List<Double> decade =
        SharedTable.rows("preferred-numbers.csv").stream()
            .filter(row -> row.get("series").equals(series))
            .map(row -> Double.valueOf(row.get("value")))
            .toList();
    return DoubleStream.of(1, 10, 100, 1000, 10_000)
        .flatMap(power -> decade.stream().mapToDouble(value -> NumberColumn.tidy(value * power)))
        .filter(span::holds)
        .sorted()
        .toArray();
  }
}
