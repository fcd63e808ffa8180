package org.staywright.document.sheet;

import com.lowagie.text.Element;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.awt.Color;
import java.util.List;

/** A table on paper: a heading row that comes again on every page, rows that stay whole. */
public final class Grid {

  private static final float SIZE = 8;
  private static final float LEADING = 1.2f;
  private static final float SMALL = 6.8f;

  private final PdfPTable table;
  private final List<Head> heads;

  /**
   * A column.
   *
   * @param text of its heading
   * @param width share of the page
   * @param number whether its cells are set to the right
   */
  public record Head(String text, float width, boolean number) {}

  public Grid(List<Head> heads) {
    this.heads = heads;
    table = new PdfPTable(widths(heads));
    table.setWidthPercentage(100);
    table.setSplitRows(true);
    table.setSplitLate(true);
    if (heads.stream().allMatch(head -> head.text().isEmpty())) {
      return;
    }
    for (Head head : heads) {
      PdfPCell cell = cell(Typeface.REGULAR, head.text(), 7, Paper.SOFT, head.number());
      cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
      cell.setBorderColor(Paper.SOFT);
      table.addCell(cell);
    }
    table.setHeaderRows(1);
  }

  private static float[] widths(List<Head> heads) {
    float[] widths = new float[heads.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = heads.get(i).width();
    }
    return widths;
  }

  PdfPTable table() {
    return table;
  }

  /** A row of text. */
  public void row(List<String> cells) {
    row(Typeface.REGULAR, cells, Paper.INK);
  }

  /** A row that must not be overlooked. */
  public void alarm(List<String> cells) {
    row(Typeface.BOLD, cells, Paper.STOP);
  }

  /** A row that stands out: a sum. */
  public void sum(List<String> cells) {
    row(Typeface.BOLD, cells, Paper.INK);
  }

  private void row(Typeface face, List<String> cells, Color colour) {
    for (int i = 0; i < cells.size(); i++) {
      table.addCell(cell(face, cells.get(i), SIZE, colour, heads.get(i).number()));
    }
  }

  /** A row with small print below it, from one of its cells to the right; both stay together. */
  public void row(List<String> cells, int under, List<String> notes, Color colour) {
    if (notes.isEmpty()) {
      row(cells);
      return;
    }
    PdfPTable whole = new PdfPTable(widths(heads));
    for (int i = 0; i < cells.size(); i++) {
      boolean number = heads.get(i).number();
      PdfPCell cell = cell(Typeface.REGULAR, cells.get(i), SIZE, Paper.INK, number);
      cell.setBorder(Rectangle.NO_BORDER);
      cell.setPaddingBottom(1);
      whole.addCell(cell);
    }
    if (under > 0) {
      PdfPCell before = cell(Typeface.REGULAR, "", SMALL, colour, false);
      before.setBorder(Rectangle.NO_BORDER);
      before.setColspan(under);
      whole.addCell(before);
    }
    PdfPCell small = cell(Typeface.REGULAR, String.join(" ", notes), SMALL, colour, false);
    small.setBorder(Rectangle.NO_BORDER);
    small.setPaddingTop(0);
    small.setColspan(cells.size() - under);
    whole.addCell(small);
    PdfPCell row = new PdfPCell(whole);
    row.setColspan(cells.size());
    row.setPadding(0);
    row.setBorder(Rectangle.BOTTOM);
    row.setBorderColor(Paper.FAINT);
    row.setBorderWidth(0.5f);
    table.addCell(row);
  }

  /** A row of empty boxes to write in. */
  public void blanks(List<String> cells, float height) {
    for (int i = 0; i < cells.size(); i++) {
      PdfPCell cell = cell(Typeface.REGULAR, cells.get(i), SIZE, Paper.INK, heads.get(i).number());
      cell.setMinimumHeight(height);
      table.addCell(cell);
    }
  }

  private static PdfPCell cell(
      Typeface face, String text, float size, Color colour, boolean number) {
    PdfPCell cell = new PdfPCell(face.phrase(text, size, LEADING * size, colour));
    face.direct(cell, text);
    cell.setLeading(0, LEADING);
    cell.setHorizontalAlignment(number ? Element.ALIGN_RIGHT : Element.ALIGN_LEFT);
    cell.setBorder(Rectangle.BOTTOM);
    cell.setBorderColor(Paper.FAINT);
    cell.setBorderWidth(0.5f);
    cell.setPadding(0);
    cell.setPaddingTop(1.6f);
    cell.setPaddingBottom(3.2f);
    cell.setPaddingRight(number ? 0 : 6);
    cell.setPaddingLeft(number ? 6 : 0);
    return cell;
  }
}
