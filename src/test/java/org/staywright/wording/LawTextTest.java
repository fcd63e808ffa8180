package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.staywright.check.Facts;
import org.staywright.fit.RandomRange;
import org.staywright.part.Part;
import org.staywright.part.PressureDirective.Standing;
import org.staywright.part.TransportText;
import org.staywright.unit.Unit;

class LawTextTest {

  private static final Wording ENGLISH = Wording.english();
  private static final Part PART = RandomRange.part(new Random(1));

  @Test
  void namesEveryTextWithItsProvision() {
    List<String[]> pairs = LawText.in(ENGLISH).pairs(PART);
    assertEquals(3, pairs.size());
    assertTrue(pairs.get(0)[0].contains("2014/68/EU"), pairs.get(0)[0]);
    assertTrue(pairs.get(1)[0].contains("ADR 2023"), pairs.get(1)[0]);
    for (String provision : List.of("IMDG", "A114", "49 CFR 173.306(f)(4)")) {
      assertTrue(pairs.get(2)[0].contains(provision), pairs.get(2)[0]);
    }
  }

  @Test
  void showsTheFiguresOfThePartBesideTheLimits() {
    List<String[]> pairs = LawText.in(ENGLISH).pairs(PART);
    double charge = PART.gas().orElseThrow().restPressure() - Unit.ATMOSPHERE;
    String bar = ENGLISH.quantity(charge, Unit.BAR, 0);
    assertTrue(pairs.get(1)[1].contains("filled to " + bar + " above the air"), pairs.get(1)[1]);
    assertTrue(pairs.get(1)[1].contains("at most 280\u00a0bar"), pairs.get(1)[1]);
    assertTrue(pairs.get(1)[1].contains("at most 80\u00a0bar·L"), pairs.get(1)[1]);
    assertTrue(pairs.get(0)[1].contains("Article 4(3)"), pairs.get(0)[1]);
  }

  @Test
  void whatWasNotReadSaysSo() {
    List<String[]> pairs = LawText.in(ENGLISH).pairs(PART);
    assertFalse(pairs.get(1)[1].contains("from memory"), pairs.get(1)[1]);
    assertTrue(pairs.get(2)[1].contains("from memory"), pairs.get(2)[1]);
    for (Standing standing : Standing.values()) {
      String sentence = ENGLISH.text("law.directive." + standing.code());
      boolean category = standing.compareTo(Standing.CATEGORY_I) >= 0;
      assertEquals(category, sentence.contains("from memory"), sentence);
    }
  }

  @Test
  void whatIsCalledReadWasReadByTheFacts() {
    for (CSVRecord row : Facts.of("regulations")) {
      if (row.get("item").matches("ADR SP283 (capacity|pressure|product|burst)")) {
        assertEquals(TransportText.ADR.seen(), row.get("seen").equals("yes"), row.toString());
      }
      if (row.get("item").startsWith("49 CFR 173.306(f)(4)(i)")) {
        assertEquals(TransportText.US.seen(), row.get("seen").equals("yes"), row.toString());
      }
    }
    assertFalse(TransportText.IMDG.seen() || TransportText.ICAO.seen());
  }
}
