package org.staywright.stock.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.staywright.database.Somebody.ANNA;

import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.BeforeEach;
import org.staywright.backup.Emptied;
import org.staywright.form.Workbooks;
import org.staywright.form.table.RowFault;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.SampleRange;
import org.staywright.stock.Stock;
import org.staywright.stock.StockCsv;

/** A stock of a few samples, and a maker's table to take in. */
public abstract class ImportBench {

  static final ImportOptions REPLACE = new ImportOptions(false, false, Map.of());
  public static final ImportOptions UPDATE = new ImportOptions(true, false, Map.of());
  public static final Imports.Watch UNSEEN = (done, total) -> true;

  /** Invented, as a maker's table would give it. */
  public static final String HEADER =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n";

  public static final String ROW =
      "TRY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  private static Range sample;

  @Inject public Stock stock;
  @Inject DataSource database;
  public CurrentRange current;
  public final Inbox inbox = new Inbox();
  public Imports imports;

  @BeforeEach
  void fillAStock() {
    emptyStock();
    if (sample == null) {
      new SampleRange(stock, true).loadIfFirst();
      sample = stock.range(1);
      emptyStock();
    }
    List<Part> some = IntStream.range(0, 60).mapToObj(i -> sample.part(70 * i)).toList();
    stock.begin("some of the samples", some, sample.fittings());
  }

  static Checked.Change change(Imports.Outcome outcome) {
    return outcome.checked().change();
  }

  RowFault refuses(String file, int row, String code) {
    RowFault fault = onlyFault(check(file));
    assertEquals(code, fault.fault().code());
    assertEquals(row, fault.row());
    assertEquals(0, imports.write(ANNA, inbox.take(stream(file), "x"), REPLACE, UNSEEN).revision());
    assertEquals(1, stock.newest());
    return fault;
  }

  static RowFault onlyFault(Checked checked) {
    assertEquals(1, checked.faultCount(), () -> checked.faults().toString());
    return checked.faults().get(0);
  }

  Checked check(String file) {
    return check(file.getBytes(StandardCharsets.UTF_8));
  }

  Checked check(byte[] file) {
    return imports
        .check(inbox.take(new ByteArrayInputStream(file), "file"), REPLACE, UNSEEN)
        .checked();
  }

  Imports.Outcome write(String file, ImportOptions options) {
    return imports.write(ANNA, inbox.take(stream(file), "file.csv"), options, UNSEEN);
  }

  static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  String export(int revision) {
    StringWriter text = new StringWriter();
    try {
      StockCsv.write(stock.range(revision), text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return text.toString();
  }

  /** The maker's table as a workbook. */
  static byte[] workbook(Consumer<Worksheet> more) {
    return Workbooks.of(HEADER + ROW, more);
  }

  final void emptyStock() {
    Emptied.all(database);
    current = new CurrentRange(stock);
    imports = new Imports(stock, current, inbox);
  }
}
