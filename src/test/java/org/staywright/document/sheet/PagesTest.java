package org.staywright.document.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.document.Printed;
import org.staywright.document.Stocked;
import org.staywright.document.chart.ForceChart;
import org.staywright.document.draw.Drawing;

/** Where pages end: never between a heading and what it stands above. */
public class PagesTest {

  private static final int ROWS = 10;

  @ParameterizedTest
  @ValueSource(ints = {1, 20, 30, 33, 36, 38, 40, 42, 44, 46, 48, 50, 52, 54})
  void aShortTableStaysWholeBelowItsHeading(int before) throws IOException {
    PdfReader reader = print(before, sheet -> sheet.grid(grid(ROWS)));
    int page = pageWith(reader, "HEADING");
    for (int row = 0; row < ROWS; row++) {
      assertEquals(page, pageWith(reader, "row" + row + "."), before + " before");
    }
    assertEquals(page, pageWith(reader, "NOTE"), before + " before");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 30, 36, 40, 44, 48, 52, 54})
  void aLongTableBeginsBelowItsHeading(int before) throws IOException {
    PdfReader reader = print(before, sheet -> sheet.grid(grid(120)));
    int page = pageWith(reader, "HEADING");
    assertEquals(page, pageWith(reader, "row0."));
    assertEquals(page, pageWith(reader, "row1."));
    assertTrue(pageWith(reader, "row119.") > page);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 30, 36, 40, 44, 48, 52, 54})
  void aDrawingStaysBelowItsHeading(int before) throws IOException {
    Drawing drawing = ForceChart.forPaper(Stocked.middling(), Stocked.ENGLISH);
    PdfReader reader = print(before, sheet -> sheet.drawing(drawing, 225));
    assertEquals(pageWith(reader, "HEADING"), pageWith(reader, "compression"));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 30, 36, 40, 44, 48, 52, 54})
  void whatBelongsTogetherStaysSo(int before) throws IOException {
    PdfReader reader =
        print(
            before,
            sheet ->
                sheet.together(
                    () -> {
                      sheet.heading("FIRST");
                      sheet.grid(grid(3));
                      sheet.heading("SECOND");
                      sheet.grid(grid(3));
                    }));
    assertEquals(pageWith(reader, "FIRST"), pageWith(reader, "SECOND"));
  }

  private interface Content {
    void fill(Sheet sheet);
  }

  private static PdfReader print(int before, Content below) throws IOException {
    Sheet.Cover cover = new Sheet.Cover("Pages", Locale.ENGLISH, "foot", null, "pages");
    return new PdfReader(
        Sheet.print(
            cover,
            sheet -> {
              sheet.sentences(IntStream.range(0, before).mapToObj(i -> "before " + i).toList());
              sheet.heading("HEADING");
              below.fill(sheet);
              sheet.note("NOTE");
            }));
  }

  private static Grid grid(int rows) {
    Grid grid = new Grid(List.of(new Grid.Head("Head", 1, false)));
    IntStream.range(0, rows).forEach(row -> grid.row(List.of("row" + row + ".")));
    return grid;
  }

  private static int pageWith(PdfReader reader, String text) throws IOException {
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      if (Printed.page(reader, page).contains(text)) {
        return page;
      }
    }
    throw new AssertionError(text + " on no page");
  }
}
