package org.staywright.web.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.document.draw.Readings;
import org.staywright.wording.Wording;

/**
 * The numbers of a chart on a page.
 *
 * @param code of the chart, in addresses
 * @param title of its table
 * @param heads of the columns, that of the rows' places first
 * @param rows cells each, the place first
 * @param every how many samples are passed over to the next row, in words; "" where none are
 * @param data all of it for {@code js/chart.js}
 */
public record Numbers(
    String code,
    String title,
    List<String> heads,
    List<List<String>> rows,
    String every,
    String data) {

  /** More rows than these nobody reads. */
  private static final int ROWS = 32;

  static Numbers of(Readings chart, Wording wording) {
    boolean free = !chart.stretches().isEmpty();
    Stream<String> names = chart.series().stream().map(Readings.Series::name);
    List<String> heads =
        Stream.of(
                Stream.of(chart.along().name()),
                names,
                free ? Stream.of(wording.text("chart.free")) : Stream.<String>empty())
            .flatMap(each -> each)
            .toList();
    double[] places = chart.places();
    List<double[]> columns =
        chart.series().stream().map(each -> chart.values(each, places)).toList();
    int step = (places.length + ROWS - 2) / (ROWS - 1);
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < places.length; i += step) {
      List<String> row = new ArrayList<>();
      row.add(chart.along().text(places[i], wording));
      for (double[] column : columns) {
        row.add(chart.up().text(column[i], wording));
      }
      if (free) {
        row.add(chart.stretch(places[i]));
      }
      rows.add(row);
    }
    return new Numbers(
        chart.code(),
        chart.up().name(),
        heads,
        rows,
        step == 1 ? "" : wording.text("chart.every", step),
        ChartData.of(chart, places, columns, wording));
  }
}
