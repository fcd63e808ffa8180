package org.staywright.form.table;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;

/** Rows of the first sheet of a workbook, read as they are asked for. */
final class SheetRows implements Rows {

  /** A workbook keeps what was typed to 15 figures; the rest is noise of its binary numbers. */
  private static final MathContext FIGURES = new MathContext(15);

  private static final int WIDEST = 1000;

  /** No number anyone means has more places. */
  private static final int LONGEST = 40;

  private final ReadableWorkbook book;
  private final Stream<org.dhatim.fastexcel.reader.Row> stream;
  private final Set<String> dates;
  private final Iterator<org.dhatim.fastexcel.reader.Row> rows;
  private List<String> header;
  private int row = 1;

  /**
   * @param dates columns in which numbers are days
   */
  SheetRows(Path path, Set<String> dates) throws IOException {
    this.dates = dates;
    try {
      book = new ReadableWorkbook(path.toFile());
      stream = book.getFirstSheet().openStream();
      rows = stream.iterator();
    } catch (IOException | RuntimeException e) {
      throw damaged();
    }
  }

  @Override
  public Row next() {
    try {
      while (rows.hasNext()) {
        var next = rows.next();
        row = next.getRowNum();
        List<String> cells = cells(next);
        if (!cells.isEmpty() && !cells.get(0).startsWith("#")) {
          header = header == null ? cells : header;
          return new Row(row, cells);
        }
      }
      return null;
    } catch (Spoiled spoiled) {
      throw spoiled;
    } catch (RuntimeException e) {
      // A damaged sheet makes the library stumble in many ways.
      throw damaged();
    }
  }

  private Spoiled damaged() {
    return new Spoiled(row, null, "XLSX", "not-a-workbook");
  }

  private List<String> cells(org.dhatim.fastexcel.reader.Row from) {
    if (from.getCellCount() > WIDEST) {
      throw new Spoiled(row, from.getCellCount(), "≤ " + WIDEST, "too-many-cells");
    }
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < from.getCellCount(); i++) {
      cells.add(from.getOptionalCell(i).map(this::text).orElse(""));
    }
    // What is only painted is no cell.
    while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
      cells.remove(cells.size() - 1);
    }
    return cells;
  }

  private String text(Cell cell) {
    if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
      return FORMULA + cell.getFormula();
    }
    if (cell.getType() == CellType.NUMBER) {
      int column = cell.getColumnIndex();
      if (header != null && column < header.size() && dates.contains(header.get(column))) {
        return cell.asDate().toLocalDate().toString();
      }
      BigDecimal number = cell.asNumber().round(FIGURES).stripTrailingZeros();
      // Written out, a number with a huge exponent would fill the memory.
      return Math.abs(number.scale()) > LONGEST ? number.toString() : number.toPlainString();
    }
    return cell.getText() == null ? "" : cell.getText();
  }

  @Override
  public void close() throws IOException {
    stream.close();
    book.close();
  }
}
