package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Part;

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

  /** Whatever language the range describes its parts in. */
  @Test
  void partsAndFittingsAreToldInTheReadersLanguage() {
    PartText german = PartText.in(Wording.of(Locale.GERMAN));
    Pattern english =
        Pattern.compile("(?i)spring|strut|column|stroke|thread|\\bball\\b|stud|clip|zinc|eyelet");
    for (Family family : Family.values()) {
      Part part = SampleRange.parts(family).get(0);
      for (String said : List.of(german.brief(part), german.specify(part))) {
        assertFalse(english.matcher(said).find(), said);
      }
      assertTrue(text.brief(part).startsWith(text.name("family", family)), text.brief(part));
    }
    for (Fitting fitting : SampleRange.read().fittings()) {
      String said = german.specify(fitting);
      // A plate's screws stand in the range's own words alone.
      String own = fitting.type() == FittingType.PLATE ? fitting.description() : "";
      assertFalse(english.matcher(said.replace(own, "")).find(), said);
      assertTrue(said.contains(own), said);
    }
  }

  private void named(String list, Coded... values) {
    for (Coded value : values) {
      assertFalse(text.name(list, value).isBlank());
    }
  }
}
