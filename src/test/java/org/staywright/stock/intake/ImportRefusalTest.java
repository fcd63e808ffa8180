package org.staywright.stock.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.Workbooks;
import org.staywright.form.table.RowFault;
import org.staywright.stock.EmptyStock;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class ImportRefusalTest extends ImportBench {

  @AfterEach
  void nothingIsChanged() {
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
  void refusesFormulas() {
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
  void refusesAWorkbookThatUnpacksWithoutEnd() {
    assertEquals("zip-bomb", onlyFault(check(Workbooks.bomb())).fault().code());
  }

  @Test
  void refusesADamagedWorkbook() {
    byte[] whole = workbook(sheet -> {});
    byte[] half = Arrays.copyOf(whole, whole.length / 2);
    assertEquals("not-a-workbook", onlyFault(check(half)).fault().code());
  }

  @Test
  void stopsTakingZerosAtTheFirst() {
    Endless zeros = new Endless(0);
    Inbox.Kept kept = inbox.take(zeros, "zeros.csv");
    assertEquals("not-a-text-file", kept.spoiled().fault().code());
    assertTrue(zeros.given < 1 << 20, zeros.given + " bytes taken");
    Endless digits = new Endless('0');
    assertEquals("row-too-long", inbox.take(digits, "zeros.csv").spoiled().fault().code());
    assertTrue(digits.given < 1 << 20, digits.given + " bytes taken");
  }
}
