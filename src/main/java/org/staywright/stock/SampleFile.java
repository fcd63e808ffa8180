package org.staywright.stock;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.staywright.form.stock.StockColumn;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Part;

/**
 * A file to fill in: every column, and an invented row for each family. The first row holds only
 * what a gas spring needs; the others hold all.
 */
public final class SampleFile {

  private static final List<String> HEADER =
      StockColumn.ALL.stream().map(StockColumn::name).toList();

  private static final List<String> NEEDED =
      List.of(
          "part_number",
          "family",
          "finish",
          "rod_thread",
          "tube_thread",
          "mounting",
          "force_class_n",
          "rod_diameter_mm",
          "tube_diameter_mm",
          "stroke_mm",
          "extended_length_mm",
          "lead_time_days");

  private SampleFile() {}

  public static String csv() {
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, RowFile.FORMAT)) {
      csv.printRecord(HEADER);
      csv.printRecords(rows());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  public static byte[] workbook() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "Staywright", "1.0")) {
      Worksheet sheet = book.newWorksheet("stock");
      row(sheet, 0, HEADER);
      sheet.range(0, 0, 0, HEADER.size() - 1).style().bold().set();
      sheet.freezePane(1, 1);
      int at = 1;
      for (List<String> row : rows()) {
        row(sheet, at++, row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void row(Worksheet sheet, int row, List<String> cells) {
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (cell.matches("-?\\d+(\\.\\d+)?")) {
        sheet.value(row, i, Double.parseDouble(cell));
      } else if (!cell.isEmpty()) {
        sheet.value(row, i, cell);
      }
    }
  }

  private static List<List<String>> rows() {
    List<Part> parts = SampleRange.parts();
    List<StockRow> whole = new ArrayList<>();
    for (Family family : Family.values()) {
      parts.stream()
          .filter(part -> part.family() == family)
          .findFirst()
          .ifPresent(part -> whole.add(new StockRow(part, null)));
    }
    whole.add(new StockRow(null, SampleRange.fittings().get(0)));
    List<List<String>> rows = new ArrayList<>();
    rows.add(least(cells(whole.get(0), 1)));
    whole.forEach(row -> rows.add(cells(row, rows.size() + 1)));
    return rows;
  }

  private static List<String> cells(StockRow row, int number) {
    List<String> cells = new ArrayList<>(row.cells());
    cells.set(HEADER.indexOf("part_number"), "EXAMPLE-" + number);
    return Stream.concat(cells.stream(), Stream.of("")).toList();
  }

  /** Of all cells those that are needed, and a progression in place of the gas volume. */
  private static List<String> least(List<String> cells) {
    List<String> least = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      String name = HEADER.get(i);
      boolean kept = NEEDED.contains(name);
      least.add(name.equals("progression") ? "1.3" : kept ? cells.get(i) : "");
    }
    return least;
  }
}
