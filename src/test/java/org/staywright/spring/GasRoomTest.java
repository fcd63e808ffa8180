package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class GasRoomTest {

  /** Round trip: a spring with that room has the progression that was stated. */
  @Test
  void givesTheProgressionThatIsStated() {
    for (double[] row :
        new double[][] {
          {0.008, 0.16, 400, 19, 1.36}, {0.01, 0.3, 800, 40, 1.2}, {0.02, 0.5, 2500, 0, 1.6}
        }) {
      double area = Math.PI / 4 * row[0] * row[0];
      double room = GasRoom.of(area, row[1], row[2], row[3], row[4]);
      GasSpring spring =
          new GasSpring(
              new Cylinder(
                  row[0],
                  0.03,
                  0.026,
                  row[1],
                  2 * row[1] + 0.08,
                  row[1] + 0.08,
                  row[3],
                  1,
                  room,
                  0),
              row[2]);
      assertEquals(row[4], spring.progression(), 1e-9);
    }
  }
}
