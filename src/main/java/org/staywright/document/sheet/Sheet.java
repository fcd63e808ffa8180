package org.staywright.document.sheet;

import com.lowagie.text.Element;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.Color;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.staywright.document.draw.Box;
import org.staywright.document.draw.Drawing;
import org.staywright.wording.Wording;

/** Pages being filled from top to bottom. The same content makes the same bytes. */
public final class Sheet {

  /** Size of the type in tables, and the room to its right, pt. */
  private static final float CELL = 8;

  private static final float PAD = 8;

  /** Of lines in cells, in type sizes. */
  private static final float LEADING = 1.15f;

  /** Share of the page that a drawing with facts beside it takes. */
  private static final float LEFT = 0.56f;

  /**
   * What stands around the content.
   *
   * @param title of the document
   * @param language it is written in
   * @param footer on every page
   * @param date of what it says, null where unknown
   * @param identity text that tells this document from any other
   * @param marks what must be seen on every page
   */
  public record Cover(
      String title,
      Locale language,
      String footer,
      LocalDate date,
      String identity,
      List<String> marks) {

    /** Of what holds on no day of its own. */
    public Cover(String title, Wording wording, String identity) {
      this(title, wording.locale(), wording.text("document.footer"), null, identity);
    }

    public Cover(String title, Locale language, String footer, LocalDate date, String identity) {
      this(title, language, footer, date, identity, List.of());
    }
  }

  private final Pages pages;

  /** Whether further headings belong to the same block. */
  private boolean joined;

  private Sheet(Pages pages) {
    this.pages = pages;
  }

  /** Prints content; a second time where the count of pages was not what the footer said. */
  public static byte[] print(Cover cover, Consumer<Sheet> content) {
    int expected = 2;
    while (true) {
      Pages pages = new Pages(cover, expected);
      content.accept(new Sheet(pages));
      int count = pages.end();
      if (count == expected) {
        return pages.bytes();
      }
      expected = count;
    }
  }

  /** What it is, its name, one sentence about it. */
  public void title(String kind, String name, String sentence) {
    paragraph(kind, Typeface.REGULAR, 9, Paper.MILD, 0, 0);
    // A long name must not fill the page.
    paragraph(name, Typeface.BOLD, name.length() > 60 ? 12 : 20, Paper.INK, 6, 0);
    paragraph(sentence, Typeface.REGULAR, 10, Paper.SOFT, 4, 10);
  }

  public void heading(String text) {
    if (!joined) {
      pages.endBlock();
    }
    paragraph(text, Typeface.BOLD, 10.5f, Paper.MILD, 10, 3);
  }

  public void note(String text) {
    paragraph(text, Typeface.REGULAR, 7.5f, Paper.SOFT, 3, 0);
  }

  public void newPage() {
    pages.newPage();
  }

  /** Headings with what stands below them, all on one page where there is room on any. */
  public void together(Runnable content) {
    pages.endBlock();
    joined = true;
    content.run();
    joined = false;
    pages.endBlock();
  }

  private void paragraph(
      String text, Typeface face, float size, Color colour, float before, float after) {
    // A cell and no paragraph: only cells order the letters of scripts that run to the left.
    PdfPCell cell = new PdfPCell(face.phrase(text, size, 1.3f * size, colour));
    face.direct(cell, text);
    cell.setLeading(1.3f * size, 0);
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setPadding(0);
    cell.setPaddingBottom(0.2f * size);
    PdfPTable table = table(100);
    table.addCell(cell);
    table.setSpacingBefore(before);
    table.setSpacingAfter(after);
    pages.add(table);
  }

  /** A drawing as wide as the page or as high as allowed. */
  public void drawing(Drawing drawing, double most) {
    PdfPTable table = table(1);
    table.addCell(picture(drawing, pages.width(), most));
    pages.add(table);
  }

  /**
   * What is told beside a drawing.
   *
   * @param pairs label and value
   */
  public record Facts(String heading, List<String[]> pairs) {}

  /** A drawing with facts to its right, a pair a row, and a note below them. */
  public void beside(Drawing drawing, double most, List<Facts> facts, String note) {
    PdfPTable told = table(56, 44);
    for (Facts each : facts) {
      told.addCell(across(each.heading(), Typeface.BOLD, Paper.MILD));
      each.pairs().forEach(pair -> pair(told, pair));
    }
    told.addCell(across(note, Typeface.REGULAR, Paper.SOFT));
    PdfPCell right = new PdfPCell(told);
    right.setBorder(Rectangle.NO_BORDER);
    right.setVerticalAlignment(Element.ALIGN_MIDDLE);
    PdfPTable table = table(100 * LEFT, 100 * (1 - LEFT));
    table.addCell(picture(drawing, LEFT * pages.width(), most));
    table.addCell(right);
    pages.add(table);
  }

  private static PdfPCell across(String text, Typeface face, Color colour) {
    PdfPCell cell = cell(text, face, colour);
    cell.setBorder(Rectangle.NO_BORDER);
    cell.setColspan(2);
    return cell;
  }

  private static PdfPCell picture(Drawing drawing, double width, double most) {
    Box box = drawing.box();
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
                    at.getTop() - scale * box.height(),
                    scale)
                .draw());
    return cell;
  }

  /** A table with a heading row that comes again on every page. */
  public void grid(Grid grid) {
    pages.add(grid.table());
  }

  /** Label and value, two pairs a row. */
  public void pairs(List<String[]> pairs) {
    PdfPTable table = table(33, 17, 30, 20);
    int rows = (pairs.size() + 1) / 2;
    for (int i = 0; i < rows; i++) {
      pair(table, pairs.get(i));
      pair(table, rows + i < pairs.size() ? pairs.get(rows + i) : new String[] {"", ""});
    }
    pages.add(table);
  }

  private void pair(PdfPTable table, String[] pair) {
    table.addCell(cell(pair[0], Typeface.REGULAR, Paper.SOFT));
    table.addCell(cell(pair[1], Typeface.REGULAR, Paper.INK));
  }

  /** A sentence a row with a word before it in its colour, the sentences below each other. */
  public void remarks(List<Remark> remarks) {
    if (remarks.isEmpty()) {
      return;
    }
    float word = 0;
    for (Remark remark : remarks) {
      word = Math.max(word, Typeface.BOLD.base().getWidthPoint(remark.word(), CELL));
    }
    word += PAD + 1;
    PdfPTable table = table(word, pages.width() - word);
    for (Remark remark : remarks) {
      table.addCell(cell(remark.word(), Typeface.BOLD, remark.colour()));
      table.addCell(cell(remark.sentence(), Typeface.REGULAR, Paper.INK));
    }
    pages.add(table);
  }

  /** What is spoken of, and sentences about it. */
  public void statements(List<String[]> pairs) {
    PdfPTable table = table(32, 68);
    pairs.forEach(pair -> pair(table, pair));
    pages.add(table);
  }

  /** Sentences below each other. */
  public void sentences(List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    PdfPTable table = table(1);
    sentences.forEach(each -> table.addCell(cell(each, Typeface.REGULAR, Paper.INK)));
    pages.add(table);
  }

  /** Numbered sentences. */
  public void steps(List<String> steps) {
    PdfPTable table = table(4, 96);
    for (int i = 0; i < steps.size(); i++) {
      table.addCell(cell(Integer.toString(i + 1), Typeface.BOLD, Paper.MILD));
      table.addCell(cell(steps.get(i), Typeface.REGULAR, Paper.INK));
    }
    pages.add(table);
  }

  /** A word in a colour and what it introduces. */
  record Remark(String word, Color colour, String sentence) {}

  private static PdfPTable table(float... widths) {
    PdfPTable table = new PdfPTable(widths);
    table.setWidthPercentage(100);
    return table;
  }

  private static PdfPCell cell(String text, Typeface face, Color colour) {
    PdfPCell cell = new PdfPCell(face.phrase(text, CELL, LEADING * CELL, colour));
    face.direct(cell, text);
    cell.setBorder(Rectangle.BOTTOM);
    cell.setBorderColor(Paper.FAINT);
    cell.setBorderWidth(0.5f);
    cell.setLeading(0, LEADING);
    cell.setPadding(0);
    cell.setPaddingTop(0.8f);
    cell.setPaddingBottom(3.6f);
    cell.setPaddingRight(PAD);
    return cell;
  }
}
