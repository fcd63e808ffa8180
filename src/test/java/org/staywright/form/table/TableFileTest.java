package org.staywright.form.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.form.Workbooks;

class TableFileTest {

  private static final String SHEET =
      "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
          + "<sheetData>%s</sheetData></worksheet>";

  private static List<Rows.Row> rows(byte[] file) {
    List<Rows.Row> all = new ArrayList<>();
    try (Rows rows = TableFile.once(new ByteArrayInputStream(file))) {
      for (Rows.Row row = rows.header(); row != null; row = rows.next()) {
        all.add(row);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return all;
  }

  private static List<Rows.Row> rows(String csv) {
    return rows(csv.getBytes(StandardCharsets.UTF_8));
  }

  private static String refused(byte[] file) {
    RowFault fault = assertThrows(Spoiled.class, () -> rows(file)).fault();
    return fault.row() + " " + fault.fault().code();
  }

  @Test
  void aWorkbookGivesTheRowsOfTheSameCsv() {
    String csv = "name,mass,small,flag\nLid,18,0.1,true\n\"a, b\",-2.5,1234567.891,false\n,,3\n";
    assertEquals(rows(csv), rows(Workbooks.of(csv)));
    assertEquals(List.of("", "", "3"), rows(csv).get(3).cells());
  }

  @Test
  void rowsAreCountedAsTheUserSeesThem() {
    byte[] gap =
        Workbooks.of(
            "a,b\n1,2\n",
            sheet -> {
              sheet.value(6, 0, "late");
              sheet.value(8, 0, "# a remark");
              sheet.value(9, 0, "last");
            });
    assertEquals(List.of(1, 2, 7, 10), rows(gap).stream().map(Rows.Row::number).toList());
    List<Rows.Row> csv = rows("# a remark\na,b\n\n1,2\n\n\nlast\n");
    assertEquals(List.of(2, 4, 7), csv.stream().map(Rows.Row::number).toList());
  }

  @Test
  void whatIsOnlyPaintedIsNoCell() {
    byte[] painted =
        Workbooks.of(
            "a,b\n1,2\n",
            sheet -> {
              sheet.range(0, 0, 3, 9).style().bold().set();
              sheet.value(2, 5, " ");
            });
    assertEquals(rows("a,b\n1,2\n"), rows(painted));
  }

  @Test
  void aByteOrderMarkIsNoPartOfTheFirstName() {
    assertEquals("a", rows("\ufeffa,b\n").get(0).cells().get(0));
  }

  @Test
  void anEmptyFileHasNoRows() {
    assertEquals(List.of(), rows(""));
    assertEquals(List.of(), rows(Workbooks.of("")));
  }

  @Test
  void refusesWhatIsNoWorkbookThatCanBeRead() {
    byte[] whole = Workbooks.of("a,b\n1,2\n");
    assertEquals("1 not-a-workbook", refused(Arrays.copyOf(whole, whole.length / 2)));
    assertEquals("1 zip-bomb", refused(Workbooks.bomb()));
    byte[] old = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 0, 0};
    assertEquals("1 old-workbook", refused(old));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<row r=\"1\"><c r=\"A1\"><v>1</v></c>",
        "<row r=\"1\"><c r=\"ZZZZZZ1\"><v>1</v></c></row>",
        "<row r=\"1\"><c r=\"ZZZZZZZZZZ1\"><v>1</v></c></row>",
        "<row r=\"one\"><c r=\"A1\"><v>1</v></c></row>",
        "<row r=\"1\"><c r=\"A1\"><v>many</v></c></row>"
      })
  void refusesASheetThatNoSpreadsheetWrites(String row) {
    assertEquals("1 not-a-workbook", refused(Workbooks.ofSheet(SHEET.formatted(row))));
  }

  @Test
  void aNumberWithoutMeasureIsNotWrittenOut() {
    String row = "<row r=\"1\"><c r=\"A1\"><v>1E999999999</v></c><c><v>0.25</v></c></row>";
    byte[] book = Workbooks.ofSheet(SHEET.formatted(row));
    assertEquals(List.of("1E+999999999", "0.25"), rows(book).get(0).cells());
  }

  @Test
  void readsNothingThatASheetPointsTo() {
    String row = "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>&other;</v></c></row>";
    for (String entity :
        List.of("SYSTEM \"file:///etc/hostname\"", "\"" + "much".repeat(100) + "\"")) {
      String sheet = "<!DOCTYPE worksheet [<!ENTITY other " + entity + ">]>" + SHEET.formatted(row);
      assertEquals("1 not-a-workbook", refused(Workbooks.ofSheet(sheet)));
    }
  }

  @Test
  void refusesColumnsPartedByAnotherSign() {
    assertEquals("1 wrong-delimiter", refused("a;b\n1;2\n".getBytes(StandardCharsets.UTF_8)));
    assertEquals("1 wrong-delimiter", refused(Workbooks.of("a;b\n1;2\n")));
  }
}
