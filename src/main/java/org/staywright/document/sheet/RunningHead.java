package org.staywright.document.sheet;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfWriter;
import java.text.Bidi;
import java.util.List;
import org.staywright.document.draw.Box;

/** What runs along: marks above each page, the sentence and the page's number at its foot. */
final class RunningHead extends PdfPageEventHelper {

  private static final float FOOT = 64;
  private static final float TOP = 30;
  private static final float LEADING = 10.5f;
  private static final float SIZE = 8;
  private static final float PAD = 5;

  private final Sheet.Cover cover;
  private final int pages;

  RunningHead(Sheet.Cover cover, int pages) {
    this.cover = cover;
    this.pages = pages;
  }

  /** Room that marks take at the top of each page, pt. */
  static float height(List<String> marks, float width) {
    return marks.isEmpty() ? 0 : box(marks, width) + 4;
  }

  private static float box(List<String> marks, float width) {
    int lines = 0;
    for (String mark : marks) {
      String shown = Typeface.BOLD.shown(mark);
      // A tenth more than its length, for what the breaks between words leave open.
      float length = 1.1f * Typeface.BOLD.base().getWidthPoint(shown, SIZE);
      lines += 1 + (int) (length / (width - 2 * PAD));
    }
    return lines * LEADING + 2 * PAD;
  }

  @Override
  public void onEndPage(PdfWriter writer, Document document) {
    PdfContentByte page = writer.getDirectContent();
    marks(page, document);
    page.saveState();
    page.setColorStroke(Paper.FAINT);
    page.setLineWidth(0.5f);
    page.moveTo(document.left(), FOOT - 6);
    page.lineTo(document.right(), FOOT - 6);
    page.stroke();
    page.restoreState();
    column(
        page,
        List.of(Typeface.REGULAR.phrase(cover.footer(), 7, 9.5f, Paper.SOFT)),
        new Box(document.left(), 20, document.right() - 40, FOOT - 8),
        9.5f);
    ColumnText.showTextAligned(
        page,
        Element.ALIGN_RIGHT,
        Typeface.REGULAR.phrase(writer.getPageNumber() + "/" + pages, 8, 10, Paper.INK),
        document.right(),
        FOOT - 17,
        0);
  }

  private void marks(PdfContentByte page, Document document) {
    if (cover.marks().isEmpty()) {
      return;
    }
    float top = page.getPdfDocument().getPageSize().getHeight() - TOP;
    float height = box(cover.marks(), document.right() - document.left());
    page.saveState();
    page.setColorStroke(Paper.STOP);
    page.setLineWidth(1);
    page.rectangle(document.left(), top - height, document.right() - document.left(), height);
    page.stroke();
    page.restoreState();
    List<Phrase> phrases =
        cover.marks().stream()
            .map(mark -> Typeface.BOLD.phrase(mark + '\n', SIZE, LEADING, Paper.STOP))
            .toList();
    column(
        page,
        phrases,
        new Box(document.left() + PAD, top - height - 4, document.right() - PAD, top - PAD + 2),
        LEADING);
  }

  private static void column(PdfContentByte page, List<Phrase> phrases, Box box, float leading) {
    ColumnText text = new ColumnText(page);
    text.setSimpleColumn(
        (float) box.left(), (float) box.bottom(), (float) box.right(), (float) box.top());
    text.setLeading(leading);
    for (Phrase phrase : phrases) {
      String content = phrase.getContent();
      if (Bidi.requiresBidi(content.toCharArray(), 0, content.length())) {
        text.setRunDirection(PdfWriter.RUN_DIRECTION_LTR);
      }
      text.addText(phrase);
    }
    try {
      text.go();
    } catch (DocumentException e) {
      throw new IllegalStateException(e);
    }
  }
}
