package org.staywright.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SeatColumnTest {

  /** 10 kg of seat; of 50 and 100 kg the feet carry a fifth. */
  private static SeatColumn seat() {
    return new SeatColumn(10, 50, 100, 0.8, 0.12);
  }

  @Test
  void carriesItselfAndTheSittersShare() {
    assertEquals(10 * 9.80665, seat().empty(), 1e-12);
    assertEquals((10 + 40) * 9.80665, seat().light(), 1e-12);
    assertEquals((10 + 80) * 9.80665, seat().heavy(), 1e-12);
    Masses shares = seat().shares();
    assertEquals(1, shares.nominal());
    assertEquals(5, shares.lightest(), 1e-12);
    assertEquals(9, shares.heaviest(), 1e-12);
    assertEquals(10, seat().inertia().orElseThrow());
  }

  @Test
  void standsUprightAndIsAsLongAsItIsHigh() {
    Travel travel = seat().travel(0.12);
    assertEquals(0, travel.shortest());
    assertEquals(0.12, travel.longest(), 1e-15);
    assertEquals(1, travel.lever()[20]);
    assertEquals(-98.0665, travel.load()[20], 1e-9);
    assertEquals(-882.5985, travel.heavy()[20], 1e-9);
    assertEquals(-490.3325, travel.light()[20], 1e-9);
    assertEquals(0.05, seat().length(0.05));
    assertEquals(1, seat().rise(0.05).orElseThrow());
    assertEquals(0, seat().lateralOffset());
    assertEquals(Mounts.RodEnd.FRAME, seat().rodEnd());
    assertEquals(Mechanism.Movement.SHIFTS, seat().movement());
    assertEquals(List.of(), seat().faults());
    assertEquals(0, seat().start());
  }

  @Test
  void mayBeSetOverLessOrMore() {
    assertEquals(0.08, seat().to(0.08).end());
    assertEquals(seat(), seat().to(0.08).to(0.12));
  }
}
