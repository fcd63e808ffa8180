package org.staywright.document.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.staywright.Reports;
import org.staywright.caution.Caution;
import org.staywright.caution.fit.Cautions;
import org.staywright.document.Printed;
import org.staywright.document.Stocked;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** Specifications of springs to be made, read back. */
class SpecificationTest {

  private static final Job LID = job("level-lid");
  private static final Ideal IDEAL = Ideal.of(LID, Stocked.RANGE);

  private static Job job(String way) {
    try (InputStream in = SpecificationTest.class.getResourceAsStream("/ways/" + way + ".json")) {
      return JobForm.read(JsonText.read(in.readAllBytes()).tree());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void saysWhatIsToBeMadeAndWhatStockDoesInItsPlace() throws IOException {
    byte[] pdf = Specification.pdf(LID, IDEAL, Stocked.ENGLISH);
    String text = Printed.text(pdf);
    assertTrue(text.contains("Specification of a spring to be made"), text);
    String force = Math.round(IDEAL.made().part().spring().force()) + " N";
    assertTrue(text.contains(force), force + " in " + text);
    assertTrue(text.contains(IDEAL.stock().part().number()), text);
    assertTrue(text.contains("Figures against requirements"), text);
    assertTrue(text.contains("not certified"), text);
    assertTrue(text.contains("not a drawing to make it by"), text);
  }

  @Test
  void carriesEveryCautionOfItsFigures() throws IOException {
    String text = Printed.text(Specification.pdf(LID, IDEAL, Stocked.ENGLISH));
    CautionText words = CautionText.in(Stocked.ENGLISH.about(LID.mechanism().code()));
    for (Caution caution : Cautions.of(LID, IDEAL.made())) {
      assertTrue(text.contains(Printed.spaced(words.sentence(caution))), text);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lift-on-a-line", "folding-bed"})
  void everyWayHasOneOfFewPages(String way) throws IOException {
    Job job = job(way);
    byte[] pdf = Specification.pdf(job, Ideal.of(job, Stocked.RANGE), Stocked.ENGLISH);
    assertTrue(new PdfReader(pdf).getNumberOfPages() <= 3);
  }

  @Test
  void aSampleIsKept() throws IOException {
    byte[] pdf = Specification.pdf(LID, IDEAL, Stocked.ENGLISH);
    Reports.hold("specification-sample.pdf", pdf);
  }

  @Test
  void isTheSameWheneverItIsPrinted() {
    assertArrayEquals(
        Specification.pdf(LID, IDEAL, Stocked.ENGLISH),
        Specification.pdf(LID, IDEAL, Stocked.ENGLISH));
  }

  @Test
  void speaksGermanToo() throws IOException {
    byte[] pdf = Specification.pdf(LID, IDEAL, Wording.of(Locale.GERMAN));
    assertEquals("Vorgabe", new PdfReader(pdf).getInfo().get("Title").toString().split(" ")[0]);
  }
}
