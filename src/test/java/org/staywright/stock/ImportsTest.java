package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.dhatim.fastexcel.Workbook;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.staywright.form.RowFault;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.GasSpring;

class ImportsTest {

  static final ImportOptions REPLACE = new ImportOptions(false, false, Map.of());
  private static final ImportOptions UPDATE = new ImportOptions(true, false, Map.of());
  private static final Imports.Watch UNSEEN = (done, total) -> true;

  /** Invented, as a maker's table would give it. */
  private static final String HEADER =
      "part_number,family,finish,rod_thread,tube_thread,mounting,rod_diameter_mm,tube_diameter_mm,"
          + "stroke_mm,extended_length_mm,force_class_n,progression,lead_time_days\n";

  private static final String ROW =
      "TRY-0001,gas-spring,zinc,M8,M8,rod-down,8,18,160,380,400,1.35,5\n";

  @TempDir Path folder;
  private static Range sample;
  private Stock stock;
  private CurrentRange current;
  private Imports imports;

  @BeforeAll
  static void readTheSampleRange() {
    Stock whole = new Stock(database());
    new SampleRange(whole, true).loadIfFirst();
    sample = whole.range(1);
  }

  @BeforeEach
  void fillAStock() {
    stock = new Stock(database());
    List<Part> some = IntStream.range(0, 60).mapToObj(i -> sample.part(70 * i)).toList();
    stock.begin("some of the samples", some, sample.fittings());
    current = new CurrentRange(stock);
    imports = new Imports(stock, current);
  }

  @Test
  void takesTheWholeRangeBackAsItWasExported() throws IOException {
    stock = new Stock(database());
    new SampleRange(stock, true).loadIfFirst();
    current = new CurrentRange(stock);
    imports = new Imports(stock, current);
    Range before = current.get();
    String exported = export(1);
    Imports.Outcome again = write(exported, REPLACE);
    assertEquals(
        new Checked.Change(0, 0, before.size() + before.fittings().size(), 0), change(again));

    Imports elsewhere = emptyStock();
    Imports.Outcome fresh =
        elsewhere.write(elsewhere.take(stream(exported), "all.csv"), REPLACE, UNSEEN);
    assertEquals(List.of(), fresh.checked().faults());
    assertEquals(before.size() + before.fittings().size(), fresh.checked().change().added());
    assertEquals(exported, export(stock.newest()));
  }

  @Test
  void derivesWhatAMakersTableLacksAndMarksIt() {
    write(HEADER + ROW, UPDATE);
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertTrue(part.derived().containsAll(List.of("boreDiameterMm", "gasVolumeMl", "frictionN")));
    assertFalse(part.derived().contains("strokeMm"));
    GasSpring spring = (GasSpring) part.spring();
    assertEquals(0.0156, spring.boreDiameter(), 1e-9);
    var law = spring.law(1, 1);
    double f2 = law.extending(spring.stroke() - 5e-3, 293.15);
    assertEquals(1.35, f2 / spring.force(), 1e-4);
  }

  @Test
  void halvesFrictionGivenAsTheDifferenceOfTwoForces() {
    String header = HEADER.replace("lead_time_days", "friction_n,lead_time_days");
    String row = ROW.replace("1.35,5", "1.35,38,5");
    write(header + row, new ImportOptions(true, true, Map.of()));
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertEquals(19, part.spring().friction());
    assertTrue(part.derived().contains("frictionN"));
  }

  @Test
  void readsInchesAndPoundsByTheHeader() {
    String header =
        HEADER
            .replace("stroke_mm", "Stroke (in)")
            .replace("extended_length_mm", "extended_length_in")
            .replace("force_class_n", "Force class [lbf]");
    write(header + ROW.replace("160,380,400", "6.25,15,90"), UPDATE);
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertEquals(0.15875, part.spring().stroke(), 1e-12);
    assertEquals(400.339945373, part.spring().force(), 1e-8);
  }

  @Test
  void readsAColumnAsItsMeaningIsChanged() {
    String header = HEADER.replace("stroke_mm", "Hub");
    assertEquals("unknown-column", onlyFault(check(header + ROW)).fault().code());
    ImportOptions said = new ImportOptions(true, false, Map.of("Hub", "stroke_mm"));
    assertEquals(2, write(header + ROW, said).revision());
  }

  @Test
  void replacesOnlyWhatTheFileHolds() {
    int fittings = current.get().fittings().size();
    int parts = current.get().size();
    Imports.Outcome outcome = write(HEADER + ROW, REPLACE);
    assertEquals(new Checked.Change(1, 0, 0, parts), change(outcome));
    assertEquals(1, current.get().size());
    assertEquals(fittings, current.get().fittings().size());
  }

  @Test
  void keepsWhatAnUpdateDoesNotName() {
    int parts = current.get().size();
    assertEquals(new Checked.Change(1, 0, 0, 0), change(write(HEADER + ROW, UPDATE)));
    String dearer = HEADER + ROW.replace(",5\n", ",9\n");
    assertEquals(new Checked.Change(0, 1, 0, 0), change(write(dearer, UPDATE)));
    assertEquals(parts + 1, current.get().size());
  }

  @Test
  void aDryRunSaysTheSameAndChangesNothing() {
    Checked dry = check(HEADER + ROW);
    assertEquals(1, stock.newest());
    assertEquals(dry.change(), write(HEADER + ROW, REPLACE).checked().change());
  }

  @Test
  void tellsEveryFaultAndKeepsAllInAFile() throws IOException {
    StringBuilder file = new StringBuilder(HEADER);
    for (int i = 0; i < 1500; i++) {
      file.append("TRY-").append(10_000 + i).append(ROW.substring(8).replace(",160,", ",-5,"));
    }
    Imports.Kept kept = imports.take(stream(file.toString()), "bad.csv");
    Checked checked = imports.write(kept, REPLACE, UNSEEN).checked();
    assertEquals(1500, checked.faultCount());
    assertEquals(1000, checked.faults().size());
    RowFault first = checked.faults().get(0);
    assertEquals(2, first.row());
    assertEquals("stroke_mm", first.fault().where());
    assertEquals("-5", first.fault().value());
    assertEquals(1501, Files.readAllLines(imports.faults(kept.id()).orElseThrow()).size());
    assertEquals(1, stock.newest());
  }

  @Test
  void refusesAnotherDelimiter() {
    refuses((HEADER + ROW).replace(',', ';'), 1, "wrong-delimiter");
    refuses((HEADER + ROW).replace(',', '\t'), 1, "wrong-delimiter");
  }

  @Test
  void refusesAnotherEncoding() {
    String umlaut = HEADER + ROW.replace("zinc", "zinkf\u00e4rbig");
    Checked latin = check(umlaut.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals("not-utf8", onlyFault(latin).fault().code());
    Checked wide = check((HEADER + ROW).getBytes(StandardCharsets.UTF_16));
    assertEquals("not-utf8", onlyFault(wide).fault().code());
  }

  @Test
  void refusesDecimalCommas() {
    refuses(HEADER + ROW.replace("1.35", "\"1,35\""), 2, "decimal-comma");
  }

  @Test
  void refusesAUnitInACell() {
    refuses(HEADER + ROW.replace(",160,", ",6.25 in,"), 2, "unit-in-cell");
  }

  @Test
  void refusesUnitsThatContradict() {
    String both = HEADER.replace("stroke_mm", "stroke_mm,stroke_in");
    refuses(both + ROW.replace(",160,", ",160,6.3,"), 1, "units-contradict");
  }

  @Test
  void refusesAHeaderWithoutItsUnit() {
    refuses(HEADER.replace("stroke_mm", "stroke") + ROW, 1, "unit-missing");
  }

  @Test
  void refusesAHeaderTwice() {
    refuses(HEADER.replace("stroke_mm", "stroke_mm,stroke_mm") + ROW, 1, "repeated");
  }

  @Test
  void refusesAPartNumberTwiceAndSaysWhereItWas() {
    RowFault twice = refuses(HEADER + ROW + ROW, 3, "number-twice");
    assertEquals("2", twice.fault().bound());
  }

  @Test
  void refusesFormulas() throws IOException {
    refuses(HEADER + ROW.replace(",160,", ",=80*2,"), 2, "formula");
    byte[] book =
        workbook(
            sheet -> {
              sheet.value(1, 8, 0);
              sheet.formula(1, 8, "80*2");
            });
    assertEquals("formula", onlyFault(check(book)).fault().code());
  }

  @Test
  void readsAWorkbookLikeTheSameTableInCsv() throws IOException {
    Imports.Kept kept = imports.take(new ByteArrayInputStream(workbook(s -> {})), "a.xlsx");
    Imports.Outcome outcome = imports.write(kept, UPDATE, UNSEEN);
    assertEquals(List.of(), outcome.checked().faults());
    Part fromBook = current.get().part("TRY-0001").orElseThrow();
    assertEquals(new Checked.Change(0, 0, 1, 0), change(write(HEADER + ROW, UPDATE)));
    assertEquals(fromBook, current.get().part("TRY-0001").orElseThrow());
  }

  @Test
  void refusesAWorkbookThatUnpacksWithoutEnd() throws IOException {
    ByteArrayOutputStream bomb = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bomb)) {
      zip.putNextEntry(new ZipEntry("[Content_Types].xml"));
      zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
      byte[] block = new byte[1 << 20];
      for (int i = 0; i < 300; i++) {
        zip.write(block);
      }
    }
    assertEquals("zip-bomb", onlyFault(check(bomb.toByteArray())).fault().code());
  }

  @Test
  void refusesADamagedWorkbook() throws IOException {
    byte[] whole = workbook(sheet -> {});
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    assertEquals("not-a-workbook", onlyFault(check(half)).fault().code());
  }

  @Test
  void stopsTakingZerosAtTheFirst() {
    Endless zeros = new Endless(0);
    Imports.Kept kept = imports.take(zeros, "zeros.csv");
    assertEquals("not-a-text-file", kept.spoiled().fault().code());
    assertTrue(zeros.given < 1 << 20, zeros.given + " bytes taken");
    Endless digits = new Endless('0');
    assertEquals("row-too-long", imports.take(digits, "zeros.csv").spoiled().fault().code());
    assertTrue(digits.given < 1 << 20, digits.given + " bytes taken");
  }

  @Test
  void stopsWhenAskedAndChangesNothing() {
    Imports.Kept kept = imports.take(stream(export(1)), "all.csv");
    assertThrows(
        CancellationException.class,
        () -> imports.write(kept, REPLACE, (done, total) -> done < total));
    assertEquals(1, stock.newest());
  }

  @Test
  void restoresAnEarlierRevisionAndTellsTheDifference() {
    String first = export(1);
    write(HEADER + ROW, REPLACE);
    RevisionDifference swapped = stock.difference(1, 2);
    assertEquals(1, swapped.added().count());
    assertEquals(List.of("TRY-0001"), swapped.added().first());
    assertEquals(stock.range(1).size(), swapped.gone().count());
    assertEquals(3, stock.restore(1, "revision 1"));
    assertEquals(first, export(3));
    assertEquals(0, stock.difference(1, 3).changed().count());
    assertEquals(first, export(1));
    assertTrue(stock.part("TRY-0001", 2).isPresent());
    assertTrue(stock.part("TRY-0001", 3).isEmpty());
  }

  @Test
  void tellsWhichValuesChanged() {
    write(HEADER + ROW, UPDATE);
    write(HEADER + ROW.replace(",5\n", ",9\n"), UPDATE);
    RevisionDifference difference = stock.difference(2, 3);
    assertEquals(
        List.of(
            new RevisionDifference.Changed(
                "TRY-0001", List.of(new RevisionDifference.Cell("lead_time_days", "5", "9")))),
        difference.changed().first());
  }

  /** One byte again and again. */
  private static final class Endless extends InputStream {

    private final int value;
    private long given;

    Endless(int value) {
      this.value = value;
    }

    @Override
    public int read() {
      given++;
      return value;
    }
  }

  private static Checked.Change change(Imports.Outcome outcome) {
    return outcome.checked().change();
  }

  private RowFault refuses(String file, int row, String code) {
    RowFault fault = onlyFault(check(file));
    assertEquals(code, fault.fault().code());
    assertEquals(row, fault.row());
    assertEquals(0, imports.write(imports.take(stream(file), "x"), REPLACE, UNSEEN).revision());
    assertEquals(1, stock.newest());
    return fault;
  }

  private static RowFault onlyFault(Checked checked) {
    assertEquals(1, checked.faultCount(), () -> checked.faults().toString());
    return checked.faults().get(0);
  }

  private Checked check(String file) {
    return check(file.getBytes(StandardCharsets.UTF_8));
  }

  private Checked check(byte[] file) {
    return imports
        .check(imports.take(new ByteArrayInputStream(file), "file"), REPLACE, UNSEEN)
        .checked();
  }

  private Imports.Outcome write(String file, ImportOptions options) {
    return imports.write(imports.take(stream(file), "file.csv"), options, UNSEEN);
  }

  private static InputStream stream(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private String export(int revision) {
    StringWriter text = new StringWriter();
    try {
      StockCsv.write(stock, revision, text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return text.toString();
  }

  private interface Filling {
    void fill(org.dhatim.fastexcel.Worksheet sheet);
  }

  /** The maker's table as a workbook. */
  private static byte[] workbook(Filling more) throws IOException {
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

  private Imports emptyStock() {
    stock = new Stock(database());
    current = new CurrentRange(stock);
    return new Imports(stock, current);
  }

  private static DataSource database() {
    JdbcDataSource database = new JdbcDataSource();
    database.setURL("jdbc:h2:mem:" + java.util.UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
    Flyway.configure()
        .dataSource(database)
        .placeholders(Map.of("ordered_text", "varchar(16)"))
        .load()
        .migrate();
    return database;
  }
}
