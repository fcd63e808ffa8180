package org.staywright.stock.intake;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVPrinter;
import org.staywright.form.table.RowFault;
import org.staywright.form.table.RowFile;
import org.staywright.unit.Fault;

/** The faults of a file: the first of them at hand, all of them in a file of their own. */
final class FaultList implements Closeable {

  static final int FIRST = 1000;

  private final Path path;
  private final List<RowFault> first = new ArrayList<>();
  private CSVPrinter all;
  private int count;

  /**
   * @param path of the file, written once there is a fault
   */
  FaultList(Path path) {
    this.path = path;
  }

  void add(int row, Fault fault) {
    count++;
    if (first.size() < FIRST) {
      first.add(new RowFault(row, fault));
    }
    try {
      if (all == null) {
        all = new CSVPrinter(Files.newBufferedWriter(path), RowFile.FORMAT);
        all.printRecord("row", "column", "value", "expected", "code");
      }
      all.printRecord(
          row, fault.where(), Objects.toString(fault.value(), ""), fault.bound(), fault.code());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot note a fault", e);
    }
  }

  int count() {
    return count;
  }

  List<RowFault> first() {
    return List.copyOf(first);
  }

  Path file() {
    return all == null ? null : path;
  }

  @Override
  public void close() throws IOException {
    if (all != null) {
      all.close();
    }
  }
}
