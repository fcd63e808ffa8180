package org.staywright.caution.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.caution.fit.Trial.has;
import static org.staywright.caution.fit.Trial.named;

import org.junit.jupiter.api.Test;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Severity;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Slam;
import org.staywright.mechanism.HingedFlap;
import org.staywright.part.Range;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** How hard a load comes to its ends, as cautions. */
class SlamCautionsTest {

  private static final Job LID = Samples.lid();

  private final Trial trial = new Trial();

  @Test
  void aSpringThatIsAnUndampedStopIsTold() {
    assertFalse(has(trial.of(LID), "undamped-stop"));
    trial.undampedStop = true;
    assertEquals(Severity.WARNING, named(trial.of(LID), "undamped-stop").severity());
  }

  @Test
  void aFlapThatSlamsNamesItsEndItsEnergyItsSpeedAndTheCorner() {
    Range range = SampleRange.read();
    Fit fit =
        Ranking.of(range, LID).fits().stream()
            .filter(each -> Slam.of(LID, each, false).isPresent())
            .findFirst()
            .orElseThrow();
    Slam slam = Slam.of(LID, fit, false).orElseThrow();
    Caution caution =
        Cautions.of(LID, fit).stream()
            .filter(each -> each.code().equals("slams") && each.at().end().equals("shut"))
            .findFirst()
            .orElseThrow();
    assertEquals(Severity.DANGER, caution.severity());
    assertEquals(slam.energy(), caution.figures().get(0).si());
    assertEquals(slam.speed(), caution.figures().get(1).si());
    assertTrue(caution.source().contains("ISO 14120:2015, from memory"));
    String sentence = CautionText.in(Wording.english().about(HingedFlap.CODE)).sentence(caution);
    assertTrue(sentence.contains(" falls shut with up to "), sentence);
    assertTrue(sentence.contains("(cold and aged, heavy load)"), sentence);
    assertTrue(sentence.contains("For comparison only"), sentence);
  }

  @Test
  void whatComesSoftlyToBothItsEndsDoesNotSlam() {
    Range range = SampleRange.read();
    Fit soft =
        Ranking.of(range, LID).fits().stream()
            .filter(fit -> Slam.of(LID, fit, true).isEmpty())
            .findFirst()
            .orElseThrow();
    assertTrue(
        Cautions.of(LID, soft).stream()
            .filter(each -> each.code().equals("slams"))
            .noneMatch(each -> each.at().end().equals("open")));
  }
}
