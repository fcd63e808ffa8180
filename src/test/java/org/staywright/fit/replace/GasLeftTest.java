package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.replace.GasLeft.Verdict;
import org.staywright.fit.replace.ScaleReading.Direction;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Unit;

class GasLeftTest {

  private static final Range RANGE = SampleRange.read();

  private static ScaleReading reading(double force, Direction direction, double celsius) {
    return new ScaleReading(new Reading(force, 5), 0.02, Unit.CELSIUS.si(celsius), direction);
  }

  @Test
  void getsBackTheShareThatWasLeftWhateverTheTemperatureAndTheDirection() {
    long seed = Long.getLong("staywright.seed", 7);
    System.out.println("GasLeftTest seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 60; i++) {
      Part part = RANGE.part(random.nextInt(RANGE.size()));
      double share = 0.3 + 0.7 * random.nextDouble();
      double celsius = -10 + 45 * random.nextDouble();
      for (Direction direction : Direction.values()) {
        double shown = reading(1, direction, celsius).of(part.spring().law(1, share));
        Optional<GasLeft> left = GasLeft.of(reading(shown, direction, celsius), part, null);
        assertEquals(share, left.orElseThrow().share(), 2e-4, "seed " + seed + ", draw " + i);
      }
    }
  }

  @Test
  void theSameReadingMeansLessGasWherePressingAddedFriction() {
    Part part = RANGE.part(1000);
    double force = part.spring().force();
    double pressing = GasLeft.of(reading(force, Direction.PRESSING, 20), part, null).get().share();
    double easing = GasLeft.of(reading(force, Direction.EASING, 20), part, null).get().share();
    assertTrue(pressing < easing, pressing + " pressing, " + easing + " easing");
  }

  @Test
  void theSameReadingInTheColdMeansMoreGas() {
    Part part = RANGE.part(1000);
    double force = 0.9 * part.spring().force();
    double cold = GasLeft.of(reading(force, Direction.EASING, 0), part, null).get().share();
    double warm = GasLeft.of(reading(force, Direction.EASING, 30), part, null).get().share();
    assertTrue(cold > warm, cold + " cold, " + warm + " warm");
  }

  @Test
  void aReadingFarAboveWhatIsPrintedHasNoShare() {
    Part part = RANGE.part(1000);
    double force = 3 * part.spring().force();
    assertEquals(Optional.empty(), GasLeft.of(reading(force, Direction.EASING, 20), part, null));
  }

  @Test
  void theVerdictMindsTheUncertainty() {
    assertEquals(Verdict.KEEP, new GasLeft(0.98, 0.05).verdict());
    assertEquals(Verdict.WATCH, new GasLeft(0.93, 0.05).verdict());
    assertEquals(Verdict.REPLACE, new GasLeft(0.7, 0.05).verdict());
    assertEquals(Verdict.TOO_STRONG, new GasLeft(1.2, 0.05).verdict());
  }

  @Test
  void lossesSpreadOverTheYears() {
    assertEquals(0.02, new GasLeft(0.8, 0.05).lostPerYear(10), 1e-12);
    assertTrue(Double.isNaN(new GasLeft(0.8, 0.05).lostPerYear(0)));
  }
}
