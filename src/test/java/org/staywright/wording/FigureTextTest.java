package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Criterion;
import org.staywright.unit.Unit;
import org.staywright.unit.Units;

/** What is asked is told in full, what is there never better than it is. */
class FigureTextTest {

  private static final Wording METRIC = Wording.of(Locale.ENGLISH, Units.METRIC);
  private static final Wording INCH = Wording.of(Locale.ENGLISH, Units.INCH_POUND);

  private static String asked(double newtons, Wording wording) {
    Kept kept = new Kept(Criterion.HAND_FORCE, newtons, 10, null);
    return FigureText.in(wording).asked(kept, Unit.NEWTON);
  }

  @Test
  void aLimitThatIsNoWholeNumberIsNotRounded() {
    assertEquals("≤\u00a016.5\u00a0N", asked(16.5, METRIC));
    assertEquals("≤\u00a050\u00a0N", asked(50, METRIC));
    // 50 N are 11.2404 lbf, which no short number tells in full; 11.25 lbf is one that does.
    assertEquals("≤\u00a011.2\u00a0lbf", asked(50, INCH));
    assertEquals("≤\u00a011.25\u00a0lbf", asked(Unit.POUND_FORCE.si(11.25), INCH));
  }

  @Test
  void whatIsMissedIsToldAsExactlyAsWhatIsAsked() {
    Blocker blocker = new Blocker(Criterion.HAND_FORCE, 16.5, 16.62, 0.01);
    assertEquals(
        "needs 16.7\u00a0N at the hand at worst, 16.5\u00a0N allowed",
        FitText.in(METRIC).blocker(blocker, Unit.NEWTON));
  }
}
