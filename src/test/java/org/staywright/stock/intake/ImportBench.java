package org.staywright.stock.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.dhatim.fastexcel.Workbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.staywright.database.Databases;
import org.staywright.form.table.RowFault;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Stock;
import org.staywright.stock.file.StockCsv;

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

  static Range sample;
  public Stock stock;
  public CurrentRange current;
  public final Inbox inbox = new Inbox();
  public Imports imports;

  @BeforeAll
  static void readTheSampleRange() {
    sample = new Stock(Databases.h2WithSamples()).range(1);
  }

  @BeforeEach
  void fillAStock() {
    stock = new Stock(database());
    List<Part> some = IntStream.range(0, 60).mapToObj(i -> sample.part(70 * i)).toList();
    stock.begin("some of the samples", some, sample.fittings());
    current = new CurrentRange(stock);
    imports = new Imports(stock, current, inbox);
  }

  static Checked.Change change(Imports.Outcome outcome) {
    return outcome.checked().change();
  }

  RowFault refuses(String file, int row, String code) {
    RowFault fault = onlyFault(check(file));
    assertEquals(code, fault.fault().code());
    assertEquals(row, fault.row());
    assertEquals(0, imports.write(inbox.take(stream(file), "x"), REPLACE, UNSEEN).revision());
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
    return imports.write(inbox.take(stream(file), "file.csv"), options, UNSEEN);
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

  interface Filling {
    void fill(org.dhatim.fastexcel.Worksheet sheet);
  }

  /** The maker's table as a workbook. */
  static byte[] workbook(Filling more) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook book = new Workbook(bytes, "test", null)) {
      var sheet = book.newWorksheet("stock");
      String[] names = HEADER.strip().split(",");
      String[] cells = ROW.strip().split(",");
      for (int i = 0; i < names.length; i++) {
        sheet.value(0, i, names[i]);
        if (cells[i].matches("[0-9.]+")) {
          sheet.value(1, i, Double.parseDouble(cells[i]));
        } else {
          sheet.value(1, i, cells[i]);
        }
      }
      more.fill(sheet);
    }
    return bytes.toByteArray();
  }

  Imports emptyStock() {
    stock = new Stock(database());
    current = new CurrentRange(stock);
    return new Imports(stock, current, inbox);
  }

  /** A new one. */
  DataSource database() {
    return Databases.h2();
  }
}
