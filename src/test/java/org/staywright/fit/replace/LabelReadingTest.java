package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.fit.replace.LabelReading.Meaning;
import org.staywright.fit.replace.LabelReading.Piece;

class LabelReadingTest {

  /** Factors of lbf and kgf: NIST SP 811, exact. */
  @ParameterizedTest
  @CsvSource({
    "400 N, 400",
    "F1=0400N, 400",
    "90 lbf, 400.339945",
    "90 lbs, 400.339945",
    "40 kgf, 392.266",
    "40 daN, 400",
    "'F1 = 62,5 N', 62.5"
  })
  void readsAForceWithItsUnit(String label, double newtons) {
    assertEquals(newtons, LabelReading.of(label).force(), 1e-5);
  }

  @ParameterizedTest
  @CsvSource({"2019-03-12, 2019-03", "12.3.2019, 2019-03", "03/2019, 2019-03", "made 2014, 2014"})
  void readsADate(String label, String madeIn) {
    assertEquals(madeIn, LabelReading.of(label).madeIn());
  }

  @Test
  void asksWhichLengthAndWhatAPlainNumberMeans() {
    LabelReading label = LabelReading.of("380 mm 160 12/19");
    assertNull(label.force());
    assertNull(label.madeIn());
    assertEquals(
        List.of(
            new Piece("380 mm", Meaning.WHICH_LENGTH),
            new Piece("160", Meaning.PLAIN_NUMBER),
            new Piece("12/19", Meaning.WEEK_OR_MONTH)),
        label.asked());
  }

  @Test
  void takesNoMakerAndNoPartNumberForAnything() {
    LabelReading label = LabelReading.of("ACMEXYZ 4512-77KL 400N");
    assertEquals(400, label.force());
    assertEquals(1, label.understood().size());
    assertTrue(label.asked().stream().allMatch(piece -> piece.meaning() == Meaning.LETTERS));
  }

  @Test
  void asksWhereTwoForcesDisagree() {
    LabelReading label = LabelReading.of("400 N 90 lbf 650 N");
    assertEquals(400, label.force());
    assertEquals(List.of(new Piece("650 N", Meaning.ANOTHER_FORCE)), label.asked());
  }

  @Test
  void aPressureIsNoForce() {
    LabelReading label = LabelReading.of("150 bar");
    assertNull(label.force());
    assertEquals(Meaning.PRESSURE, label.understood().get(0).meaning());
  }
}
