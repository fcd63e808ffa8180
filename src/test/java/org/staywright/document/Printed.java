package org.staywright.document;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The text of PDFs. */
public final class Printed {

  private static final Pattern FONT = Pattern.compile("/\\S+ ([0-9.]+) Tf");

  private Printed() {}

  public static String text(byte[] pdf) throws IOException {
    PdfReader reader = new PdfReader(pdf);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      text.append(page(reader, page)).append('\n');
    }
    return text.toString().strip();
  }

  /** Size of the smallest letters, pt. */
  public static double smallest(byte[] pdf) throws IOException {
    PdfReader reader = new PdfReader(pdf);
    double least = Double.POSITIVE_INFINITY;
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      String content = new String(reader.getPageContent(page), StandardCharsets.ISO_8859_1);
      for (MatchResult font : FONT.matcher(content).results().toList()) {
        least = Math.min(least, Double.parseDouble(font.group(1)));
      }
    }
    return least;
  }

  public static String page(PdfReader reader, int page) throws IOException {
    return spaced(new PdfTextExtractor(reader).getTextFromPage(page));
  }

  /** Lines broken by the page's width and spaces that do not break read as plain spaces. */
  public static String spaced(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }
}
