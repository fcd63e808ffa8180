package org.staywright.document.chart;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.document.draw.Readings;
import org.staywright.wording.Wording;

/** The numbers of a chart as CSV, in the units of its headings, with decimal points. */
public final class ChartCsv {

  private ChartCsv() {}

  public static String of(Readings chart, Wording wording) {
    double[] places = chart.places();
    List<double[]> columns = new ArrayList<>();
    List<Object> heads = new ArrayList<>();
    heads.add(chart.along().name());
    for (Readings.Series each : chart.series()) {
      heads.add(each.name() + ": " + chart.up().name());
      columns.add(chart.values(each, places));
    }
    if (!chart.stretches().isEmpty()) {
      heads.add(wording.text("chart.free"));
    }
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(heads);
      for (int i = 0; i < places.length; i++) {
        List<Object> row = new ArrayList<>();
        row.add(number(places[i], chart.along(), wording));
        for (double[] column : columns) {
          row.add(number(column[i], chart.up(), wording));
        }
        if (!chart.stretches().isEmpty()) {
          row.add(chart.stretch(places[i]));
        }
        csv.printRecord(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String number(double value, Readings.Measure measure, Wording wording) {
    if (Double.isNaN(value)) {
      return "";
    }
    double shown = measure.shown(value, wording);
    // Two figures more than the axis tells apart.
    return BigDecimal.valueOf(shown)
        .setScale(measure.decimals(wording) + 2, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }
}
