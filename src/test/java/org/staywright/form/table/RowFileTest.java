package org.staywright.form.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.form.part.FittingRow;
import org.staywright.form.part.PartRow;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.wording.Wording;

class RowFileTest {

  private static List<Part> parts;
  private static Map<String, String> good;

  @BeforeAll
  static void takeARowOfTheSampleRange() throws IOException {
    parts = parts(Files.readString(Path.of("catalog-data/gas-springs.csv"))).rows();
    List<String> cells = PartRow.of(parts.get(1000)).cells(PartRow.COLUMNS);
    good = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      good.put(PartRow.COLUMNS.get(i), cells.get(i));
    }
  }

  @Test
  void writesWhatItReads() {
    for (Part part : parts) {
      List<String> cells = PartRow.of(part).cells(PartRow.COLUMNS);
      Part again = PartRow.read(new Cells(column -> cells.get(PartRow.COLUMNS.indexOf(column))));
      assertEquals(part, again);
    }
  }

  @Test
  void writesFittingsAsItReadsThem() throws IOException {
    var file = Files.newBufferedReader(Path.of("catalog-data/fittings.csv"));
    var read = RowFile.read(file, FittingRow.COLUMNS, FittingRow::read);
    assertEquals(List.of(), read.faults());
    for (Fitting fitting : read.rows()) {
      List<String> cells = FittingRow.of(fitting).cells();
      Cells row = new Cells(column -> cells.get(FittingRow.COLUMNS.indexOf(column)));
      assertEquals(fitting, FittingRow.read(row));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "stroke_mm, -5, out-of-bounds",
    "stroke_mm, 19.9, out-of-bounds",
    "orifice_diameter_mm, 0, out-of-bounds",
    "orifice_diameter_mm, NaN, not-a-number",
    "stroke_mm, '', missing",
    "stroke_mm, NaN, not-a-number",
    "stroke_mm, Infinity, not-a-number",
    "stroke_mm, 1e999, out-of-bounds",
    "stroke_mm, 0x10p1, not-a-number",
    "stroke_mm, 20d, not-a-number",
    "stroke_mm, '31,5', decimal-comma",
    "part_number, abc, not-of-the-form",
    "part_number, A-B-C-D-E-F-G-H-I, not-of-the-form",
    "part_number, '', missing",
    "family, air-spring, not-a-choice",
    "finish, gold, not-a-choice",
    "mounting, '', missing",
    "rod_thread, '', missing",
    "bore_diameter_mm, 500, out-of-bounds",
    "extended_length_mm, 100, out-of-bounds",
    "gas_volume_ml, 0.5, out-of-bounds",
    "force_tolerance_n, 49000, out-of-bounds",
    "force_class_n, 50000, gas-out-of-bounds",
    "max_temperature_c, -40, out-of-bounds",
    "cold_friction_factor, 0.5, out-of-bounds",
    "price_breaks, 1:-3, not-of-the-form",
    "price_breaks, 1:0, not-of-the-form",
    "price_breaks, 0:2.00, not-of-the-form",
    "price_breaks, 1:2.00;1:1.90, not-of-the-form",
    "price_breaks, 1:2.00001, not-of-the-form",
    "price_breaks, =1+1, formula",
    "price_currency, '', missing",
    "price_valid_until, 2027-02-30, not-of-the-form",
    "price_pack, 0, out-of-bounds",
    "stock, -1, out-of-bounds",
    "stock, 1.5, not-whole",
    "stock_date, yesterday, not-of-the-form",
    "lead_time_days, '', missing"
  })
  void namesTheColumnAndValueAtFault(String column, String value, String code) {
    RowFile<Part> read = parts(file(with(column, value)));
    assertEquals(List.of(), read.rows());
    RowFault fault = read.faults().get(0);
    assertEquals(2, fault.row());
    assertEquals(column, fault.fault().where());
    assertEquals(value.isEmpty() ? null : value, fault.fault().value());
    assertEquals(code, fault.fault().code());
    assertTrue(Wording.english().fault(fault.fault()).contains(column));
  }

  @Test
  void collectsEveryFaultOfEveryRowAndKeepsTheGoodOnes() {
    Map<String, String> bad = with("stroke_mm", "-5");
    bad.put("mass_kg", "heavy");
    bad.put("part_number", "BAD-1");
    RowFile<Part> read = parts(file(bad, good));
    assertEquals(1, read.rows().size());
    assertEquals(
        List.of("stroke_mm", "mass_kg"),
        read.faults().stream().map(fault -> fault.fault().where()).toList());
  }

  @Test
  void leavesOutWhatNeedNotBeGiven() {
    Map<String, String> row = new LinkedHashMap<>(good);
    for (String column :
        List.of("description", "end_damping_mm", "price_breaks", "stock", "stock_date")) {
      row.put(column, "");
    }
    RowFile<Part> read = parts(file(row));
    assertEquals(List.of(), read.faults());
    Part part = read.rows().get(0);
    assertEquals(null, part.description());
    assertEquals(null, part.offer().price());
    assertEquals(0, part.offer().stock());
  }

  @Test
  void refusesANumberGivenTwice() {
    RowFile<Part> read = parts(file(good, good));
    assertEquals(1, read.rows().size());
    assertEquals("repeated", read.faults().get(0).fault().code());
    assertEquals(3, read.faults().get(0).row());
  }

  @Test
  void refusesColumnsItDoesNotKnow() {
    RowFile<Part> read = parts("part_number,colour\nABCD,red\n");
    assertEquals("unknown-column", read.faults().get(0).fault().code());
    assertEquals("colour", read.faults().get(0).fault().where());
  }

  @Test
  void refusesWhatIsNoTable() {
    assertEquals("empty-file", parts("").faults().get(0).fault().code());
    assertEquals("empty-file", parts("# nothing\n").faults().get(0).fault().code());
    assertEquals("unknown-column", parts("{\"a\": 1}\n").faults().get(0).fault().code());
    assertEquals("not-csv", parts("part_number\n\"AB").faults().get(0).fault().code());
  }

  @Test
  void readsAnEmptyTable() {
    RowFile<Part> read = parts(String.join(",", PartRow.COLUMNS) + "\n");
    assertEquals(List.of(), read.faults());
    assertEquals(List.of(), read.rows());
  }

  @Test
  void takesColumnsInAnyOrderBehindAByteOrderMark() {
    List<String> turned = new ArrayList<>(good.keySet());
    java.util.Collections.reverse(turned);
    String cells =
        String.join(",", turned.stream().map(column -> quoted(good.get(column))).toList());
    RowFile<Part> read = parts("\ufeff" + String.join(",", turned) + "\n" + cells + "\n");
    assertEquals(List.of(), read.faults());
    assertEquals(List.of(parts.get(1000)), read.rows());
  }

  private static Map<String, String> with(String column, String value) {
    Map<String, String> row = new LinkedHashMap<>(good);
    row.put(column, value);
    return row;
  }

  @SafeVarargs
  private static String file(Map<String, String>... rows) {
    StringBuilder text = new StringBuilder(String.join(",", good.keySet())).append('\n');
    Arrays.stream(rows)
        .forEach(
            row ->
                text.append(
                        String.join(",", row.values().stream().map(RowFileTest::quoted).toList()))
                    .append('\n'));
    return text.toString();
  }

  private static String quoted(String cell) {
    return '"' + cell + '"';
  }

  private static RowFile<Part> parts(String text) {
    return RowFile.read(new StringReader(text), PartRow.COLUMNS, PartRow::read);
  }
}
