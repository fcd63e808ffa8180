package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.staywright.fit.RandomRange;
import org.staywright.part.PressureDirective.Standing;
import org.staywright.unit.Unit;

/** Published thresholds are in {@link LawChecks}. */
class PressureDirectiveTest {

  @Test
  void neverStandsLowerWithMorePressureOrMoreRoom() {
    long seed = 20_261_125;
    System.out.println("PressureDirectiveTest seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 10_000; i++) {
      double volume = Math.pow(10, -5 + 4 * random.nextDouble());
      double pressure = Math.pow(10, 4 + 4.8 * random.nextDouble());
      Standing plain = new PressureDirective(volume, pressure).standing();
      Standing more = new PressureDirective(volume, pressure * 1.5).standing();
      Standing wider = new PressureDirective(volume * 1.5, pressure).standing();
      String draw = "seed " + seed + ", draw " + i + ": " + volume + " m³, " + pressure + " Pa";
      assertTrue(more.compareTo(plain) >= 0, draw);
      assertTrue(wider.compareTo(plain) >= 0, draw);
    }
  }

  @Test
  void countsTheHighestPressureAboveTheAirAndAllTheRoomInside() {
    Part part = RandomRange.part(new Random(7));
    PressureDirective directive = PressureDirective.of(part).orElseThrow();
    double room =
        part.gas().orElseThrow().cylinder().gasVolume()
            + part.gas().orElseThrow().cylinder().oilVolume();
    assertEquals(room, directive.volume(), 1e-15);
    double gauge = part.limits().pressure() - Unit.ATMOSPHERE;
    assertEquals(gauge, directive.pressure(), 1e-6);
    assertEquals(room * gauge, directive.product(), 1e-9);
  }

  @Test
  void aSpringOfOurRangeIsSoundEngineeringPractice() {
    for (int seed = 0; seed < 50; seed++) {
      Part part = RandomRange.part(new Random(seed));
      assertEquals(Standing.SOUND_PRACTICE, PressureDirective.of(part).orElseThrow().standing());
    }
  }
}
