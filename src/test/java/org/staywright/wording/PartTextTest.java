package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;

class PartTextTest {

  private final PartText text = PartText.in(Wording.english());

  @Test
  void everyValueOfAListHasAName() {
    named("family", Family.values());
    named("finish", Finish.values());
    named("mounting", Mounting.values());
    named("fitting", FittingType.values());
  }

  @Test
  void numbersHaveNoMoreDecimalsThanTheyNeed() {
    Wording english = Wording.english();
    assertEquals("8", english.shortest(8.0, 1));
    assertEquals("12.6", english.shortest(12.6000001, 1));
    assertEquals("0.06", english.shortest(0.06, 3));
    assertEquals("−10", english.shortest(-10, 2));
    assertEquals("100", english.shortest(100, 2));
  }

  private void named(String list, Coded... values) {
    for (Coded value : values) {
      assertFalse(text.name(list, value).isBlank());
    }
  }
}
