package org.staywright.document.order;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.job.order.PartsList;
import org.staywright.wording.Wording;

/** A parts list as CSV, one row a line, by RFC 4180. */
public final class PartsListCsv {

  /** Spreadsheets take a cell that begins like this for a formula (OWASP, CSV Injection). */
  private static final String FORMULA = "=+-@\t\r\n";

  private PartsListCsv() {}

  public static String of(PartsList list, Wording wording) {
    PartsListAnswer answer = PartsListAnswer.of(list, wording);
    StringBuilder text = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(Stream.of(OrderColumn.values()).map(OrderColumn::code).toList());
      for (LineAnswer line : answer.lines()) {
        csv.printRecord(
            Stream.of(OrderColumn.values()).map(column -> cell(column.of(answer, line))).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static String cell(Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof String text) {
      return safe(text);
    }
    return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
  }

  /** Text that no spreadsheet takes for a formula. */
  public static String safe(String text) {
    return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }
}
