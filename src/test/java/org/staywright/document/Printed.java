package org.staywright.document;

import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;

/** The text of PDFs. */
final class Printed {

  private Printed() {}

  static String text(byte[] pdf) throws IOException {
    PdfReader reader = new PdfReader(pdf);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      text.append(page(reader, page)).append('\n');
    }
    return text.toString().strip();
  }

  static String page(PdfReader reader, int page) throws IOException {
    return spaced(new PdfTextExtractor(reader).getTextFromPage(page));
  }

  /** Lines broken by the page's width and spaces that do not break read as plain spaces. */
  static String spaced(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }
}
