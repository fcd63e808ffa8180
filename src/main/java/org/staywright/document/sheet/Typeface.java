package org.staywright.document.sheet;

import com.lowagie.text.Font;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.text.Bidi;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.staywright.unit.Unit;

/** The embedded type, read once: DejaVu Sans, which has every sign the documents use. */
public enum Typeface {
  REGULAR("DejaVuSans.ttf"),
  BOLD("DejaVuSans-Bold.ttf");

  /** WHITE SQUARE, which both faces have. */
  private static final int LACKING = 0x25a1;

  /** The space between a number and its unit, or its bound's sign. */
  private static final Pattern MEASURE =
      Pattern.compile(
          Arrays.stream(Unit.values())
              .map(unit -> Pattern.quote(unit.symbol()))
              .collect(
                  Collectors.joining(
                      "|", "(?<=[≤≥]) (?=\\d)|(?<=\\d) (?=(?:", ")(?![\\p{L}\\d]))")));

  private final BaseFont base;

  Typeface(String file) {
    this.base = read(file);
  }

  public BaseFont base() {
    return base;
  }

  Font font(float size, Color colour) {
    return new Font(base, size, Font.NORMAL, colour);
  }

  /** Text in lines, no number parted from its unit, every sign that the type lacks a box. */
  public Phrase phrase(String text, float size, float leading, Color colour) {
    String whole = MEASURE.matcher(text).replaceAll("\u00a0");
    return new Phrase(leading, shown(whole), font(size, colour));
  }

  /** Lets a cell order the letters of scripts that run to the left. */
  void direct(PdfPCell cell, String text) {
    if (Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
      cell.setRunDirection(PdfWriter.RUN_DIRECTION_LTR);
    }
  }

  /** The text with a box for every sign that the type lacks: nothing is dropped silently. */
  public String shown(String text) {
    if (text.codePoints().allMatch(this::has)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints().map(sign -> has(sign) ? sign : LACKING).forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private boolean has(int sign) {
    return base.charExists(sign) || sign == '\n' || Character.getType(sign) == Character.FORMAT;
  }

  private static BaseFont read(String file) {
    try (InputStream in = Typeface.class.getResourceAsStream("/fonts/" + file)) {
      BaseFont font =
          BaseFont.createFont(
              file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, in.readAllBytes(), null);
      font.setSecureRandom(new Fixed());
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException("font " + file, e);
    }
  }

  /** Names the subset alike every time, so that a document is the same whenever it is made. */
  private static final class Fixed extends SecureRandom {

    private static final long serialVersionUID = 1L;

    @Override
    public double nextDouble() {
      return 0.5;
    }
  }
}
