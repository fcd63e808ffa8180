package org.staywright.document.order;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.PartsList;
import org.staywright.wording.Wording;

/** A parts list as a workbook: numbers and dates are such, text never is a formula. */
public final class PartsListXlsx {

  private static final String DATE = "yyyy-mm-dd";
  private static final String MONEY = "#,##0.00##";

  private final PartsList list;
  private final Wording wording;
  private final OrderText text;
  private final List<String> marks;

  private PartsListXlsx(PartsList list, Wording wording) {
    this.list = list;
    this.wording = wording;
    this.text = new OrderText(wording);
    this.marks = text.marks(list);
  }

  public static byte[] of(PartsList list, Wording wording) {
    return new PartsListXlsx(list, wording).write();
  }

  private byte[] write() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 15);
    try (Workbook book = new Workbook(bytes, "Staywright", "1.0")) {
      lines(book.newWorksheet(wording.text("document.parts-list")));
      terms(book.newWorksheet(wording.text("document.terms")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private void lines(Worksheet sheet) {
    OrderColumn[] columns = OrderColumn.values();
    for (int c = 0; c < columns.length; c++) {
      sheet.value(0, c, wording.text(columns[c].key()));
      sheet.width(c, columns[c].width());
    }
    sheet.range(0, 0, 0, columns.length - 1).style().bold().wrapText(true).set();
    sheet.freezePane(2, 1);
    sheet.repeatRows(0);
    running(sheet);
    PartsListAnswer answer = PartsListAnswer.of(list, wording);
    int row = 1;
    for (LineAnswer line : answer.lines()) {
      for (int c = 0; c < columns.length; c++) {
        put(sheet, row, c, columns[c].of(answer, line), columns[c].isMoney());
      }
      row++;
    }
    put(sheet, row, OrderColumn.DESCRIPTION.ordinal(), wording.text("document.total"), false);
    put(sheet, row, OrderColumn.LINE_TOTAL.ordinal(), list.total(), true);
    put(sheet, row, OrderColumn.CURRENCY.ordinal(), list.currency(), false);
    put(sheet, row, OrderColumn.LINE_MASS_KG.ordinal(), list.mass(), false);
    sheet.range(row, 0, row, columns.length - 1).style().bold().set();
    sheet.style(row, OrderColumn.LINE_TOTAL.ordinal()).bold().format(MONEY).set();
  }

  /** Marks go onto every printed page. */
  private void running(Worksheet sheet) {
    String above = String.join(" | ", marks).replace("&", "&&");
    // A header of a workbook holds 255 characters.
    if (!marks.isEmpty()) {
      String fitting =
          above.length() <= 250
              ? above
              : wording.text("document.chosen-although.many", marks.size());
      sheet.header(fitting, Position.LEFT);
    }
    sheet.footer(wording.text("document.footer").replace("&", "&&"), Position.LEFT);
  }

  private void terms(Worksheet sheet) {
    sheet.width(0, 34);
    sheet.width(1, 60);
    running(sheet);
    int row = 0;
    for (String mark : marks) {
      put(sheet, row, 0, mark, false);
      sheet.style(row++, 0).bold().set();
    }
    for (String sentence : text.weak(list)) {
      put(sheet, row++, 0, sentence, false);
    }
    row = pair(sheet, row, "document.total", list.total());
    row = pair(sheet, row, "document.terms.currency", list.currency());
    row = pair(sheet, row, "document.terms.vat", wording.text("document.terms.net"));
    row = pair(sheet, row, "document.valid-until", list.validUntil());
    row = pair(sheet, row, "document.column.lead-time-days", list.leadTimeDays());
    row = pair(sheet, row, "document.column.line-mass-kg", list.mass());
    row = pair(sheet, row, "document.terms.counted", list.countedOn());
    for (ListedJob job : list.jobs()) {
      row++;
      row = pair(sheet, row, "document.column.job", text.name(job.wanted().job()));
      row = pair(sheet, row, "document.column.sets", job.wanted().sets());
      row = pair(sheet, row, "document.column.spares", job.wanted().spares());
      row = pair(sheet, row, "document.column.set-cost", job.setCost());
      row = pair(sheet, row, "document.sets-in-ten-years", job.setsInTenYears());
      row = pair(sheet, row, "document.column.ten-years", job.tenYearCost());
    }
    for (String note : text.unmatched(list)) {
      put(sheet, ++row, 0, note, false);
    }
    row++;
    for (String key : List.of("ten-years.one", "transport.about", "storage.about", "footer")) {
      put(sheet, ++row, 0, wording.text("document." + key), false);
    }
  }

  private int pair(Worksheet sheet, int row, String key, Object value) {
    put(sheet, row, 0, wording.text(key), false);
    put(sheet, row, 1, value, value instanceof BigDecimal && !key.endsWith("mass-kg"));
    sheet.style(row, 1).horizontalAlignment("left").set();
    return row + 1;
  }

  private static void put(Worksheet sheet, int row, int column, Object value, boolean money) {
    if (value instanceof Number number) {
      sheet.value(row, column, number);
    } else if (value instanceof LocalDate date) {
      sheet.value(row, column, date);
      sheet.style(row, column).format(DATE).set();
    } else if (value instanceof Boolean flag) {
      sheet.value(row, column, flag);
    } else if (value != null) {
      sheet.value(row, column, value.toString());
    }
    if (money && value != null) {
      sheet.style(row, column).format(MONEY).set();
    }
  }
}
