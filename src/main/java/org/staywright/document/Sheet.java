package org.staywright.document;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Consumer;

/** A4 pages being filled from top to bottom. The same content makes the same bytes. */
final class Sheet {

  private static final float MARGIN = 48;
  private static final float FOOT = 64;

  /** A heading with less than this below it starts a new page, pt. */
  private static final float LEAST = 80;

  private static final String AUTHOR = "Staywright";

  /**
   * What stands around the content.
   *
   * @param title of the document
   * @param language it is written in
   * @param footer on every page
   * @param date of what it says, null where unknown
   * @param identity text that tells this document from any other
   */
  record Cover(String title, Locale language, String footer, LocalDate date, String identity) {}

  private final Document document = new Document(PageSize.A4, MARGIN, MARGIN, MARGIN, MARGIN + 22);
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
  private final PdfWriter writer;

  private Sheet(Cover cover, int pages) {
    try {
      writer = PdfWriter.getInstance(document, bytes);
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
    writer.setPageEvent(new Footer(cover, pages));
    document.addTitle(cover.title());
    document.addAuthor(AUTHOR);
    document.addCreator(AUTHOR);
    document.open();
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(cover.language().toLanguageTag()));
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
    fix(cover);
  }

  /** Prints content; a second time where the count of pages was not what the footer said. */
  static byte[] print(Cover cover, Consumer<Sheet> content) {
    int expected = 2;
    while (true) {
      Sheet sheet = new Sheet(cover, expected);
      content.accept(sheet);
      int pages = sheet.writer.getPageNumber();
      sheet.document.close();
      if (pages == expected) {
        return sheet.bytes.toByteArray();
      }
      expected = pages;
    }
  }

  /** Date and identifier come from the content, not from the clock. */
  private void fix(Cover cover) {
    if (cover.date() == null) {
      writer.getInfo().remove(PdfName.CREATIONDATE);
    } else {
      GregorianCalendar day = GregorianCalendar.from(cover.date().atStartOfDay(ZoneOffset.UTC));
      day.setTimeZone(TimeZone.getTimeZone("UTC"));
      writer.getInfo().put(PdfName.CREATIONDATE, new PdfDate(day));
    }
    writer.getInfo().remove(PdfName.MODDATE);
    try {
      byte[] id =
          MessageDigest.getInstance("MD5")
              .digest(cover.identity().getBytes(StandardCharsets.UTF_8));
      writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What it is, its name, one sentence about it. */
  void title(String kind, String name, String sentence) {
    paragraph(kind, Typeface.REGULAR, 9, Paper.MILD, 0, 0);
    paragraph(name, Typeface.BOLD, 20, Paper.INK, 10, 0);
    paragraph(sentence, Typeface.REGULAR, 10, Paper.SOFT, 4, 10);
  }

  void heading(String text) {
    if (writer.getVerticalPosition(true) - document.bottom() < LEAST) {
      document.newPage();
    }
    paragraph(text, Typeface.BOLD, 10.5f, Paper.MILD, 12, 5);
  }

  void note(String text) {
    paragraph(text, Typeface.REGULAR, 7.5f, Paper.SOFT, 3, 0);
  }

  void newPage() {
    document.newPage();
  }

  private void paragraph(
      String text, Typeface face, float size, Color colour, float before, float after) {
    Paragraph paragraph = new Paragraph(1.3f * size, text, face.font(size, colour));
    paragraph.setSpacingBefore(before);
    paragraph.setSpacingAfter(after);
    add(paragraph);
  }

  /** A drawing as wide as the page or as high as allowed. */
  void drawing(Drawing drawing, double most) {
    Box box = drawing.box();
    double width = document.right() - document.left();
    double scale = Math.min(width / box.width(), most / box.height());
    PdfPCell cell = new PdfPCell();
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setFixedHeight((float) (scale * box.height()));
    cell.setCellEvent(
        (around, at, canvases) ->
            new PdfPen(
                    canvases[PdfPTable.TEXTCANVAS],
                    drawing,
                    at.getLeft() + (width - scale * box.width()) / 2,
                    at.getBottom(),
                    scale)
                .draw());
    PdfPTable table = table(1);
    table.addCell(cell);
    add(table);
  }

  /** Label and value, two pairs a row. */
  void pairs(List<String[]> pairs) {
    PdfPTable table = table(33, 17, 30, 20);
    int rows = (pairs.size() + 1) / 2;
    for (int i = 0; i < rows; i++) {
      pair(table, pairs.get(i));
      pair(table, rows + i < pairs.size() ? pairs.get(rows + i) : new String[] {"", ""});
    }
    add(table);
  }

  private void pair(PdfPTable table, String[] pair) {
    table.addCell(cell(pair[0], Typeface.REGULAR, Paper.SOFT));
    table.addCell(cell(pair[1], Typeface.REGULAR, Paper.INK));
  }

  /** A sentence a row with a word before it in its colour. */
  void remarks(List<Remark> remarks) {
    PdfPTable table = table(13, 87);
    for (Remark remark : remarks) {
      table.addCell(cell(remark.word(), Typeface.BOLD, remark.colour()));
      table.addCell(cell(remark.sentence(), Typeface.REGULAR, Paper.INK));
    }
    add(table);
  }

  /** A word in a colour and what it introduces. */
  record Remark(String word, Color colour, String sentence) {}

  private static PdfPTable table(float... widths) {
    PdfPTable table = new PdfPTable(widths);
    table.setWidthPercentage(100);
    return table;
  }

  private static PdfPCell cell(String text, Typeface face, Color colour) {
    PdfPCell cell = new PdfPCell(new Phrase(11, text, face.font(8.5f, colour)));
    cell.setBorder(Rectangle.BOTTOM);
    cell.setBorderColor(Paper.FAINT);
    cell.setBorderWidth(0.5f);
    cell.setPadding(0);
    cell.setPaddingTop(2.2f);
    cell.setPaddingBottom(4.2f);
    cell.setPaddingRight(8);
    return cell;
  }

  private void add(Element element) {
    try {
      document.add(element);
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The sentence and the page's number at the foot of each page. */
  private static final class Footer extends PdfPageEventHelper {

    private final Cover cover;
    private final int pages;

    Footer(Cover cover, int pages) {
      this.cover = cover;
      this.pages = pages;
    }

    @Override
    public void onEndPage(PdfWriter writer, Document document) {
      PdfContentByte page = writer.getDirectContent();
      page.saveState();
      page.setColorStroke(Paper.FAINT);
      page.setLineWidth(0.5f);
      page.moveTo(document.left(), FOOT - 6);
      page.lineTo(document.right(), FOOT - 6);
      page.stroke();
      page.restoreState();
      ColumnText text = new ColumnText(page);
      text.setSimpleColumn(
          new Phrase(9.5f, cover.footer(), Typeface.REGULAR.font(7, Paper.SOFT)),
          document.left(),
          20,
          document.right() - 40,
          FOOT - 8,
          9.5f,
          Element.ALIGN_LEFT);
      try {
        text.go();
      } catch (DocumentException e) {
        throw new IllegalStateException(e);
      }
      ColumnText.showTextAligned(
          page,
          Element.ALIGN_RIGHT,
          new Phrase(writer.getPageNumber() + "/" + pages, Typeface.REGULAR.font(8, Paper.INK)),
          document.right(),
          FOOT - 17,
          0);
    }
  }
}
