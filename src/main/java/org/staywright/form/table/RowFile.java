package org.staywright.form.table;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * A file of parts, fittings or points: the rows that could be read and every fault of the others.
 * Lines that begin with # are comments; the first other line names the columns, in any order.
 *
 * @param <T> what a row is
 */
public final class RowFile<T> {

  /** How files are read and written. */
  public static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setCommentMarker('#')
          .setIgnoreEmptyLines(true)
          .setRecordSeparator('\n')
          .get();

  private interface Source {
    Rows open() throws IOException;
  }

  private final List<String> columns;
  private final Function<Cells, T> read;
  private final Set<String> keys = new HashSet<>();
  private final List<T> rows = new ArrayList<>();
  private final List<RowFault> faults = new ArrayList<>();

  private RowFile(List<String> columns, Function<Cells, T> read) {
    this.columns = columns;
    this.read = read;
  }

  /**
   * Reads a text to its end, whatever is wrong with it.
   *
   * @param columns that may be there, the first of which is the key
   * @param read makes one thing of the cells of a row, or refuses
   */
  public static <T> RowFile<T> read(Reader text, List<String> columns, Function<Cells, T> read) {
    return new RowFile<>(columns, read).of(() -> new CsvRows(text));
  }

  /** The same of a file as it came, a workbook or CSV. */
  public static <T> RowFile<T> read(
      InputStream file, List<String> columns, Function<Cells, T> read) {
    return new RowFile<>(columns, read).of(() -> TableFile.once(file));
  }

  private RowFile<T> of(Source source) {
    try (Rows file = source.open()) {
      Rows.Row header = file.header();
      if (header == null) {
        throw new Spoiled(1, null, String.join(", ", columns), "empty-file");
      }
      Heading heading =
          new Heading(header, columns::contains, String.join(", ", columns), columns.get(0));
      heading.faults().forEach(fault -> fault(header, fault));
      Rows.Row row = faults.isEmpty() ? file.next() : null;
      for (; row != null; row = file.next()) {
        row(row, heading);
      }
    } catch (Spoiled spoiled) {
      faults.add(spoiled.fault());
    } catch (IOException e) {
      throw new UncheckedIOException("the file did not come whole", e);
    }
    return this;
  }

  /** What could be read, in the order of the file. */
  public List<T> rows() {
    return List.copyOf(rows);
  }

  /** What could not, in the order of the file. */
  public List<RowFault> faults() {
    return List.copyOf(faults);
  }

  private void row(Rows.Row row, Heading heading) {
    List<Fault> spoiled = row.faults(heading.names());
    if (!spoiled.isEmpty()) {
      spoiled.forEach(fault -> fault(row, fault));
      return;
    }
    try {
      T one = read.apply(new Cells(column -> heading.cell(row, column)));
      String key = heading.cell(row, columns.get(0)).strip();
      if (keys.add(key)) {
        rows.add(one);
      } else {
        fault(row, new Fault(columns.get(0), key, "", "repeated"));
      }
    } catch (Refusal refusal) {
      refusal.faults().forEach(fault -> fault(row, fault));
    }
  }

  private void fault(Rows.Row row, Fault fault) {
    faults.add(new RowFault(row.number(), fault));
  }
}
