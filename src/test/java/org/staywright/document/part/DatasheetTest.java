package org.staywright.document.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.PageSize;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.parser.PdfTextExtractor;
import java.io.IOException;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.Reports;
import org.staywright.caution.Caution;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.Stocked;
import org.staywright.document.sheet.Edition;
import org.staywright.document.sheet.Paper;
import org.staywright.document.sheet.Typeface;
import org.staywright.fit.SampleRange;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** Datasheets read back; one is kept as a sample in {@code reports/}. */
class DatasheetTest {

  private static final Edition EDITION = new Edition(1, LocalDate.of(2026, 11, 20));
  private static final Part PART = Stocked.middling();
  private static final byte[] PDF = Datasheet.pdf(PART, EDITION, Stocked.ENGLISH);

  @Test
  void saysWhatItIsAboutAndInWhichLanguage() throws IOException {
    PdfReader reader = new PdfReader(PDF);
    assertEquals("Datasheet " + PART.number(), reader.getInfo().get("Title"));
    assertEquals("Staywright", reader.getInfo().get("Author"));
    assertEquals("en", reader.getCatalog().getAsString(PdfName.LANG).toUnicodeString());
  }

  @Test
  void hasTwoPagesOfA4ThatSaySo() throws IOException {
    PdfReader reader = new PdfReader(PDF);
    assertEquals(2, reader.getNumberOfPages());
    for (int page = 1; page <= 2; page++) {
      assertEquals(PageSize.A4.getWidth(), reader.getPageSize(page).getWidth(), 0.5);
      assertEquals(PageSize.A4.getHeight(), reader.getPageSize(page).getHeight(), 0.5);
      String text = new PdfTextExtractor(reader).getTextFromPage(page);
      assertTrue(text.contains(page + "/2"), text);
      assertTrue(text.contains("not certified"), text);
      assertTrue(text.contains("2026-11-20"), text);
    }
  }

  @Test
  void itsTextCanBeReadBack() throws IOException {
    String text = text(PDF);
    assertTrue(text.contains(PART.number()), text);
    assertTrue(text.contains("400 N"), text);
    assertTrue(text.contains("ΔF1"), text);
    assertTrue(text.contains("−30 °C"), text);
    assertTrue(text.contains("⌀18"), text);
  }

  @Test
  void carriesEveryCautionOfThePart() throws IOException {
    String text = text(PDF);
    List<Caution> cautions = Cautions.of(PART);
    assertTrue(cautions.size() >= 10, cautions.toString());
    for (Caution caution : cautions) {
      String sentence = spaced(CautionText.in(Stocked.ENGLISH).sentence(caution));
      assertTrue(text.contains(sentence), sentence + " in " + text);
    }
  }

  @Test
  void everyFontIsEmbedded() throws IOException {
    PdfReader reader = new PdfReader(PDF);
    int fonts = 0;
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      PdfDictionary used =
          reader.getPageN(page).getAsDict(PdfName.RESOURCES).getAsDict(PdfName.FONT);
      for (Object name : used.getKeys()) {
        PdfDictionary font = used.getAsDict((PdfName) name);
        assertEquals("/Identity-H", font.getAsName(PdfName.ENCODING).toString());
        PdfArray descendants = font.getAsArray(PdfName.DESCENDANTFONTS);
        PdfDictionary about = descendants.getAsDict(0).getAsDict(PdfName.FONTDESCRIPTOR);
        assertNotNull(about.get(PdfName.FONTFILE2), font.toString());
        fonts++;
      }
    }
    assertTrue(fonts >= 2, "fonts: " + fonts);
  }

  @Test
  void theTypefaceHasTheSignsOfPhysics() {
    for (char sign : "Δηθσρµ±×·°²³−≤≥⌀…".toCharArray()) {
      assertTrue(Typeface.REGULAR.base().charExists(sign), "sign " + sign);
      assertTrue(Typeface.BOLD.base().charExists(sign), "bold sign " + sign);
    }
  }

  @Test
  void noNumberIsPartedFromItsUnitAtTheEndOfALine() {
    String kept =
        "at most\u00a0≤\u00a050\u00a0N, from 2 on at 20\u00a0°C and 100\u00a0mm/s; 3 Nords";
    String plain = "at most\u00a0≤ 50 N, from 2 on at 20 °C and 100 mm/s; 3 Nords";
    assertEquals(kept, Typeface.REGULAR.phrase(plain, 8, 10, Paper.INK).getContent());
  }

  @Test
  void saysADampersResistanceEachWay() throws IOException {
    Part part = SampleRange.parts(Family.DAMPER).get(0);
    Damper damper = (Damper) part.spring();
    String text = text(Datasheet.pdf(part, EDITION, Stocked.ENGLISH)).replace(" ", "");
    for (double speed : new double[] {0.05, 0.1, 0.2}) {
      String at = "Resistanceat" + Math.round(1000 * speed) + "mm/s,";
      assertTrue(text.contains(at + "pushedin" + Math.round(damper.force(speed)) + "N"), text);
      assertTrue(text.contains(at + "comingout" + Math.round(-damper.force(-speed)) + "N"), text);
    }
  }

  @Test
  void isTheSameWheneverItIsPrinted() {
    assertArrayEquals(PDF, Datasheet.pdf(PART, EDITION, Stocked.ENGLISH));
  }

  @Test
  void everyKindOfPartFitsOnTwoPages() throws IOException {
    List<Part> parts = Stocked.parts();
    for (int i = 0; i < parts.size(); i += 97) {
      for (Wording wording : List.of(Stocked.ENGLISH, Stocked.GERMAN)) {
        byte[] pdf = Datasheet.pdf(parts.get(i), EDITION, wording);
        String what = wording.locale() + " " + parts.get(i);
        assertEquals(2, new PdfReader(pdf).getNumberOfPages(), what);
      }
    }
  }

  @Test
  void everyFamilyTakesAsManyPagesInGermanAsInEnglish() throws IOException {
    for (Family family : EnumSet.complementOf(EnumSet.of(Family.GAS_SPRING))) {
      List<Part> parts = SampleRange.parts(family);
      for (int i = 0; i < parts.size(); i += 97) {
        byte[] english = Datasheet.pdf(parts.get(i), EDITION, Stocked.ENGLISH);
        byte[] german = Datasheet.pdf(parts.get(i), EDITION, Stocked.GERMAN);
        assertEquals(
            new PdfReader(english).getNumberOfPages(),
            new PdfReader(german).getNumberOfPages(),
            parts.get(i).toString());
      }
    }
  }

  @Test
  void aSampleIsKept() throws IOException {
    Reports.hold("datasheet-sample.pdf", PDF);
  }

  private static String text(byte[] pdf) throws IOException {
    PdfReader reader = new PdfReader(pdf);
    StringBuilder text = new StringBuilder();
    for (int page = 1; page <= reader.getNumberOfPages(); page++) {
      text.append(new PdfTextExtractor(reader).getTextFromPage(page)).append('\n');
    }
    return spaced(text.toString());
  }

  /** Lines broken by the page's width and spaces that do not break read as plain spaces. */
  private static String spaced(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ");
  }
}
