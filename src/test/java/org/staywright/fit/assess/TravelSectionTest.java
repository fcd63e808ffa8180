package org.staywright.fit.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Travel;

class TravelSectionTest {

  /** 61 samples, 10 mm apart, from 0.2 m. */
  private static final Travel TRAVEL =
      new ForceProfile(List.of(new ForceProfile.Point(0.2, 1), new ForceProfile.Point(0.8, 1)))
          .travel(0.8);

  @Test
  void coversAStretchWithTheSampleOnEitherSideOfIt() {
    assertEquals(new TravelSection(5, 15), TravelSection.of(TRAVEL, 0.255, 0.345));
    assertEquals(new TravelSection(0, 15), TravelSection.of(TRAVEL, null, 0.345));
    assertEquals(new TravelSection(5, 60), TravelSection.of(TRAVEL, 0.255, null));
    assertEquals(new TravelSection(0, 60), TravelSection.of(TRAVEL, null, null));
    // At a sample itself none besides is needed.
    double[] q = TRAVEL.q();
    assertEquals(new TravelSection(5, 15), TravelSection.of(TRAVEL, q[5], q[15]));
    assertEquals(new TravelSection(5, 15), TravelSection.within(TRAVEL, q[5], q[15]));
    assertEquals(new TravelSection(0, 1), TravelSection.of(TRAVEL, 0.1, 0.205));
  }

  @Test
  void withinItHasNoSampleOutside() {
    assertEquals(new TravelSection(6, 14), TravelSection.within(TRAVEL, 0.255, 0.345));
    assertEquals(new TravelSection(0, 14), TravelSection.within(TRAVEL, null, 0.345));
    assertEquals(new TravelSection(6, 60), TravelSection.within(TRAVEL, 0.255, null));
  }

  @Test
  void hasOneSampleAtLeast() {
    assertEquals(new TravelSection(60, 60), TravelSection.of(TRAVEL, 0.9, 1.0));
    assertEquals(new TravelSection(60, 60), TravelSection.within(TRAVEL, 0.9, 1.0));
    assertEquals(new TravelSection(6, 6), TravelSection.within(TRAVEL, 0.255, 0.256));
    assertEquals(new TravelSection(0, 0), TravelSection.within(TRAVEL, null, 0.1));
  }

  @Test
  void holdsBothOfItsEnds() {
    TravelSection stretch = new TravelSection(5, 15);
    assertTrue(stretch.holds(5) && stretch.holds(10) && stretch.holds(15));
    assertFalse(stretch.holds(4) || stretch.holds(16));
  }
}
