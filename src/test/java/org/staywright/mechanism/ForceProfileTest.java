package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Fault;

class ForceProfileTest {

  private static ForceProfile profile(double... lengthAndForce) {
    return new ForceProfile(
        IntStream.range(0, lengthAndForce.length / 2)
            .mapToObj(i -> new ForceProfile.Point(lengthAndForce[2 * i], lengthAndForce[2 * i + 1]))
            .toList());
  }

  @Test
  void asksForTheForcesOfTheTableAndInBetweenOnALine() {
    Travel travel = profile(0.3, 300, 0.4, 200, 0.6, 260).travel(0.6);
    assertEquals(0.3, travel.q()[0]);
    assertEquals(0.6, travel.q()[60], 1e-15);
    assertEquals(0.35, travel.length()[10], 1e-12);
    for (double[] loads : List.of(travel.load(), travel.heavy(), travel.light())) {
      assertEquals(-300, loads[0], 1e-9);
      assertEquals(-250, loads[10], 1e-9);
      assertEquals(-200, loads[20], 1e-9);
      assertEquals(-230, loads[40], 1e-9);
      assertEquals(-260, loads[60], 1e-9);
    }
    assertEquals(1, travel.lever()[17]);
    assertEquals(0, travel.friction());
  }

  @Test
  void staysAtItsLastForceBeyondTheTable() {
    assertEquals(-200, profile(0.3, 300, 0.4, 200).travel(0.5).load()[60], 1e-9);
  }

  @Test
  void liesBetweenItsFirstAndItsLastLength() {
    ForceProfile profile = profile(0.3, 300, 0.4, 200, 0.6, 260);
    assertEquals(0.3, profile.start());
    assertEquals(0.6, profile.end());
    assertEquals(0.47, profile.length(0.47));
    assertEquals(Mechanism.Movement.SHIFTS, profile.movement());
    assertEquals(0, profile.lateralOffset());
    assertEquals(Mounts.RodEnd.EITHER, profile.rodEnd());
    assertTrue(profile.rise(0.4).isEmpty());
    assertTrue(profile.inertia().isEmpty());
    assertEquals(new Masses(1, 1, 1), profile.shares());
  }

  @Test
  void refusesATableThatDoesNotRiseOrIsNone() {
    assertEquals(List.of(), profile(0.3, 300, 0.4, 200).faults());
    assertEquals(
        List.of(new Fault("points", 1, "≥ 2", "profile-too-short")), profile(0.3, 300).faults());
    assertEquals(
        List.of(
            new Fault("points/1", 0.35, "> 350 mm", "profile-not-rising"),
            new Fault("points/3", 0.3, "> 400.1 mm", "profile-not-rising")),
        profile(0.35, 300, 0.35, 200, 0.4001, 1, 0.3, 2).faults());
  }
}
