package org.staywright.form.table;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * A CSV file of parts or fittings: the rows that could be read and every fault of the others. Lines
 * that begin with # are comments; the first other line names the columns, in any order.
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

  private final List<String> columns;
  private final Function<Cells, T> read;
  private final Map<String, Integer> places = new HashMap<>();
  private final Set<String> keys = new HashSet<>();
  private final List<T> rows = new ArrayList<>();
  private final List<RowFault> faults = new ArrayList<>();

  private RowFile(List<String> columns, Function<Cells, T> read) {
    this.columns = columns;
    this.read = read;
  }

  /**
   * Reads a file to its end, whatever is wrong with it.
   *
   * @param columns that may be there, the first of which is the key
   * @param read makes one thing of the cells of a row, or refuses
   */
  public static <T> RowFile<T> read(Reader file, List<String> columns, Function<Cells, T> read) {
    RowFile<T> result = new RowFile<>(columns, read);
    int line = 1;
    try (CSVParser parser = FORMAT.parse(file)) {
      for (CSVRecord record : parser) {
        line = (int) parser.getCurrentLineNumber();
        if (result.places.isEmpty()) {
          result.header(line, record);
        } else {
          result.row(line, record);
        }
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      // The parser's word for a quote that never ends and the like.
      result.fault(line, new Fault("", null, "CSV (RFC 4180)", "not-csv"));
    }
    if (result.places.isEmpty() && result.faults.isEmpty()) {
      result.fault(line, new Fault(columns.get(0), null, columns.get(0), "missing"));
    }
    return result;
  }

  /** What could be read, in the order of the file. */
  public List<T> rows() {
    return List.copyOf(rows);
  }

  /** What could not, in the order of the file. */
  public List<RowFault> faults() {
    return List.copyOf(faults);
  }

  private void header(int line, CSVRecord record) {
    for (int i = 0; i < record.size(); i++) {
      String name = record.get(i).replace("\ufeff", "").strip();
      if (!columns.contains(name)) {
        fault(line, new Fault(name, name, String.join(", ", columns), "unknown-column"));
      } else if (places.containsKey(name)) {
        fault(line, new Fault(name, name, name, "repeated"));
      }
      places.putIfAbsent(name, i);
    }
    if (!places.containsKey(columns.get(0))) {
      fault(line, new Fault(columns.get(0), null, columns.get(0), "missing"));
    }
  }

  private void row(int line, CSVRecord record) {
    if (record.size() > places.size()) {
      String bound = "≤ " + places.size();
      fault(line, new Fault("", record.size(), bound, "too-many-cells"));
      return;
    }
    Cells cells = new Cells(column -> cell(record, column));
    try {
      T row = read.apply(cells);
      String key = cell(record, columns.get(0)).strip();
      if (keys.add(key)) {
        rows.add(row);
      } else {
        fault(line, new Fault(columns.get(0), key, "", "repeated"));
      }
    } catch (Refusal refusal) {
      refusal.faults().forEach(fault -> fault(line, fault));
    }
  }

  private String cell(CSVRecord record, String column) {
    Integer place = places.get(column);
    return place == null || place >= record.size() ? null : record.get(place);
  }

  private void fault(int line, Fault fault) {
    faults.add(new RowFault(line, fault));
  }
}
