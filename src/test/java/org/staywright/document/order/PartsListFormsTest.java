package org.staywright.document.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.document.Stocked.ENGLISH;
import static org.staywright.document.Stocked.RANGE;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.Reports;
import org.staywright.document.Printed;
import org.staywright.document.job.JobSheet;
import org.staywright.form.schema.AnswerJson;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.PartsList;

/** The four forms of a list read back and held against each other; samples are kept. */
class PartsListFormsTest {

  private static final Chosen LID = Orders.lid("Floor locker lid", RANGE);
  private static final PartsList LIST = Orders.list(LID);

  private final JsonNode json = AnswerJson.tree(PartsListAnswer.of(LIST, ENGLISH));
  private final String csv = PartsListCsv.of(LIST, ENGLISH);
  private final byte[] xlsx = PartsListXlsx.of(LIST, ENGLISH);
  private final byte[] pdf = PartsListPdf.of(LIST, ENGLISH);

  @Test
  void everyFormCarriesTheSameFigures() throws IOException {
    List<CSVRecord> table = records(csv);
    List<Row> rows = rows(xlsx);
    String paper = Printed.text(pdf);
    assertEquals(LIST.lines().size(), table.size());
    assertEquals(LIST.lines().size() + 2, rows.size(), "heading and sum");
    for (int i = 0; i < table.size(); i++) {
      JsonNode line = json.at("/lines/" + i);
      for (OrderColumn column : OrderColumn.values()) {
        String name = OrderColumns.json(column);
        if (name != null) {
          JsonNode value = line.at(name);
          same(value, table.get(i).get(column.code()), column + " in CSV");
          same(value, cell(rows.get(i + 1), column), column + " in XLSX");
        }
      }
      String printed =
          ENGLISH.number(line.get("quantity").intValue(), 0)
              + ENGLISH.money(line.get("unitPrice").decimalValue())
              + ENGLISH.money(line.get("lineTotal").decimalValue())
              + ENGLISH.number(line.get("stock").intValue(), 0)
              + line.get("leadTimeDays").intValue()
              + "d"
              + ENGLISH.exact(line.get("lineMassKg").decimalValue());
      // The reader of PDFs does not always tell columns apart.
      assertTrue(paper.replace(" ", "").contains(printed), printed + " in " + paper);
      assertTrue(paper.contains(line.get("partNumber").textValue()));
      assertTrue(paper.contains(line.get("description").textValue()), paper);
    }
    Row sum = rows.get(rows.size() - 1);
    same(json.get("total"), cell(sum, OrderColumn.LINE_TOTAL), "total");
    same(json.get("massKg"), cell(sum, OrderColumn.LINE_MASS_KG), "mass");
    assertTrue(paper.contains(ENGLISH.money(json.get("total").decimalValue())));
    assertTrue(paper.contains(ENGLISH.exact(json.get("massKg").decimalValue()) + " kg"), paper);
    assertTrue(paper.contains(json.get("validUntil").textValue()));
    assertTrue(paper.contains(ENGLISH.money(json.at("/jobs/0/setCost").decimalValue())));
    assertTrue(paper.contains(ENGLISH.money(json.at("/jobs/0/tenYearCost").decimalValue())));
  }

  @Test
  void theSumsAreThoseOfTheLines() {
    BigDecimal total = BigDecimal.ZERO;
    BigDecimal mass = BigDecimal.ZERO;
    for (JsonNode line : json.get("lines")) {
      BigDecimal quantity = line.get("quantity").decimalValue();
      assertEquals(
          0,
          line.get("unitPrice")
              .decimalValue()
              .multiply(quantity)
              .compareTo(line.get("lineTotal").decimalValue()));
      total = total.add(line.get("lineTotal").decimalValue());
      mass = mass.add(line.get("massKg").decimalValue().multiply(quantity));
    }
    assertEquals(0, total.compareTo(json.get("total").decimalValue()));
    assertEquals(0, mass.compareTo(json.get("massKg").decimalValue()));
  }

  @Test
  void theWorkbookHasRealNumbersAndDatesAndAFrozenHeading(@TempDir Path folder) throws IOException {
    List<Row> rows = rows(xlsx);
    Row first = rows.get(1);
    for (OrderColumn number :
        List.of(OrderColumn.QUANTITY, OrderColumn.UNIT_PRICE, OrderColumn.LINE_MASS_KG)) {
      assertEquals(CellType.NUMBER, first.getCell(number.ordinal()).getType(), number.toString());
    }
    assertEquals(
        LIST.lines().get(0).item().offer().price().validUntil(),
        first.getCell(OrderColumn.VALID_UNTIL.ordinal()).asDate().toLocalDate());
    String sheet = entry(xlsx, "xl/worksheets/sheet1.xml", folder);
    assertTrue(sheet.contains("state=\"frozen\""), sheet.substring(0, 600));
    assertTrue(sheet.contains("ySplit=\"1\""), sheet.substring(0, 600));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1"})
  void noCellOfACsvIsTakenForAFormula(String text) {
    assertTrue(PartsListCsv.safe(text).startsWith("'"));
  }

  @Test
  void textThatLooksLikeAFormulaIsTextInAWorkbook() throws IOException {
    byte[] book = PartsListXlsx.of(Orders.list(Orders.lid("=1+1", RANGE)), ENGLISH);
    try (ReadableWorkbook read = new ReadableWorkbook(new ByteArrayInputStream(book))) {
      List<Row> terms = read.getSheet(1).orElseThrow().read();
      Cell name =
          terms.stream()
              .flatMap(Row::stream)
              .filter(cell -> cell != null && "=1+1".equals(cell.getValue()))
              .findFirst()
              .orElseThrow();
      assertEquals(CellType.STRING, name.getType());
    }
  }

  @Test
  void descriptionsCarryDimensionsForceEndsAndFinish() {
    String spring = json.at("/lines/0/description").textValue();
    for (String word : List.of("rod ", "tube ", "stroke ", "extended", "F1 ", "threads ")) {
      assertTrue(spring.contains(word), spring);
    }
    assertTrue(spring.contains("zinc") || spring.contains("stainless"), spring);
  }

  @Test
  void theAlternateIsOnTheShelfAndSaysWhatDiffersAtTheHand() {
    JsonNode alternate = json.at("/lines/0/alternate");
    assertTrue(alternate.get("stock").intValue() >= json.at("/lines/0/needed").intValue());
    String number = alternate.get("partNumber").textValue();
    Chosen other = Orders.with(LID, number);
    assertEquals(
        other.fit().figures().hand().openWorst().value()
            - LID.fit().figures().hand().openWorst().value(),
        alternate.get("openingMoreN").doubleValue(),
        1e-3);
    assertEquals(
        other.fit().figures().hand().closeWorst().value()
            - LID.fit().figures().hand().closeWorst().value(),
        alternate.get("closingMoreN").doubleValue(),
        1e-3);
  }

  @Test
  void samplesAreKept() throws IOException {
    Reports.hold("parts-list-sample.pdf", pdf);
    Reports.hold("parts-list-sample.csv", csv);
    Reports.hold("job-sheet-sample.pdf", JobSheet.pdf(LID, LIST, ENGLISH));
    Reports.hold("quotation-request-sample.pdf", QuotationRequest.pdf(LIST, ENGLISH));
    // A workbook says when it was made: what is in it counts.
    Path book = Reports.made("parts-list-sample.xlsx", xlsx);
    assertEquals(content(xlsx), content(Files.readAllBytes(book)));
    assertEquals(LIST.lines().size() + 2, rows(xlsx).size());
  }

  private static void same(JsonNode value, String cell, String what) {
    if (value.isNumber()) {
      assertEquals(0, value.decimalValue().compareTo(new BigDecimal(cell)), what);
    } else {
      assertEquals(value.isNull() || value.isMissingNode() ? "" : value.asText(), cell, what);
    }
  }

  private static void same(JsonNode value, Cell cell, String what) {
    if (value.isNull() || value.isMissingNode()) {
      assertTrue(cell == null || cell.getType() == CellType.EMPTY, what);
    } else if (value.isNumber()) {
      assertEquals(value.doubleValue(), cell.asNumber().doubleValue(), 1e-9, what);
    } else if (value.isBoolean()) {
      assertEquals(value.booleanValue(), cell.asBoolean(), what);
    } else if (cell.getType() == CellType.NUMBER) {
      assertEquals(value.textValue(), cell.asDate().toLocalDate().toString(), what);
    } else {
      assertEquals(value.textValue(), cell.asString(), what);
    }
  }

  private static List<CSVRecord> records(String csv) throws IOException {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    return format.parse(new StringReader(csv)).getRecords();
  }

  private static List<Row> rows(byte[] book) throws IOException {
    try (ReadableWorkbook read = new ReadableWorkbook(new ByteArrayInputStream(book))) {
      return read.getFirstSheet().read();
    }
  }

  private static List<String> content(byte[] book) throws IOException {
    try (ReadableWorkbook read = new ReadableWorkbook(new ByteArrayInputStream(book))) {
      List<String> rows = new ArrayList<>();
      for (Sheet sheet : read.getSheets().toList()) {

        sheet.read().forEach(row -> row.forEach(cell -> rows.add(String.valueOf(cell))));
      }
      return rows;
    }
  }

  private static Cell cell(Row row, OrderColumn column) {
    return row.getOptionalCell(column.ordinal()).orElse(null);
  }

  private static String entry(byte[] book, String name, Path folder) throws IOException {
    Path file = Files.write(folder.resolve("book.xlsx"), book);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      byte[] bytes = zip.getInputStream(zip.getEntry(name)).readAllBytes();
      return new String(bytes, StandardCharsets.UTF_8);
    }
  }
}
