package org.staywright.document.sheet;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.PageSize;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfEncryption;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;

/**
 * A4 pages that blocks are set on, one below the other: a heading keeps to what it stands above,
 * and what is short is not torn apart.
 */
final class Pages {

  private static final float MARGIN = 44;

  /** A block up to this height stays whole, pt; of a higher one its heading keeps so much. */
  private static final float WHOLE = 290;

  private static final float BEGINNING = 80;

  /** A table of more rows is not measured: it is longer than a page. */
  private static final int MANY_ROWS = 60;

  private static final String AUTHOR = "Staywright";

  private final Document document;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 16);
  private final PdfWriter writer;

  /** Not yet set. */
  private final List<PdfPTable> block = new ArrayList<>();

  /**
   * @param count of them, told at the foot of each
   */
  Pages(Sheet.Cover cover, int count) {
    float top = MARGIN + RunningHead.height(cover.marks(), PageSize.A4.getWidth() - 2 * MARGIN);
    document = new Document(PageSize.A4, MARGIN, MARGIN, top, MARGIN + 22);
    try {
      writer = PdfWriter.getInstance(document, bytes);
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
    writer.setPageEvent(new RunningHead(cover, count));
    document.addTitle(cover.title());
    document.addAuthor(AUTHOR);
    document.addCreator(AUTHOR);
    document.open();
    writer.getExtraCatalog().put(PdfName.LANG, new PdfString(cover.language().toLanguageTag()));
    writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
    date(cover.date());
    identify(cover.identity());
  }

  /** The date comes from the content, not from the clock. */
  private void date(LocalDate date) {
    if (date == null) {
      writer.getInfo().remove(PdfName.CREATIONDATE);
    } else {
      GregorianCalendar day = GregorianCalendar.from(date.atStartOfDay(ZoneOffset.UTC));
      day.setTimeZone(TimeZone.getTimeZone("UTC"));
      writer.getInfo().put(PdfName.CREATIONDATE, new PdfDate(day));
    }
    writer.getInfo().remove(PdfName.MODDATE);
  }

  private void identify(String identity) {
    try {
      byte[] id =
          MessageDigest.getInstance("MD5").digest(identity.getBytes(StandardCharsets.UTF_8));
      writer.getInfo().put(PdfName.FILEID, PdfEncryption.createInfoId(id, id));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Width between the margins, pt. */
  float width() {
    return document.right() - document.left();
  }

  void add(PdfPTable table) {
    block.add(table);
  }

  /** Sets the block, on a new page where this one has not the room that it needs. */
  void endBlock() {
    if (block.isEmpty()) {
      return;
    }
    float at = writer.getVerticalPosition(true);
    if (at < document.top() && at - document.bottom() < needed()) {
      document.newPage();
    }
    try {
      for (PdfPTable table : block) {
        document.add(table);
      }
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
    block.clear();
  }

  void newPage() {
    endBlock();
    document.newPage();
  }

  /** All of a short block; of a long one its heading and the picture or the first rows below. */
  private float needed() {
    float all = 0;
    for (PdfPTable table : block) {
      all += height(table);
    }
    if (all <= WHOLE || block.size() == 1) {
      return Math.min(all, WHOLE);
    }
    PdfPTable first = block.get(1);
    return height(block.get(0)) + (first.size() == 1 ? height(first) : BEGINNING);
  }

  private float height(PdfPTable table) {
    if (table.size() > MANY_ROWS) {
      return Float.POSITIVE_INFINITY;
    }
    table.setTotalWidth(width());
    return table.spacingBefore() + table.getTotalHeight() + table.spacingAfter();
  }

  int end() {
    endBlock();
    int count = writer.getPageNumber();
    document.close();
    return count;
  }

  /** Once it has ended. */
  byte[] bytes() {
    return bytes.toByteArray();
  }
}
