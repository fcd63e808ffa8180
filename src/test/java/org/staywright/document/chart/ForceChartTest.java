package org.staywright.document.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.staywright.document.Printed;
import org.staywright.document.Stocked;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Graphic;
import org.staywright.fit.SampleRange;
import org.staywright.part.Family;
import org.staywright.part.Part;

/** The chart of a part's force over its stroke. */
class ForceChartTest {

  /** Gas gets stronger when hot, steel softer. */
  @Test
  void temperaturesAreNamedInTheOrderOfTheirCurves() {
    assertEquals(List.of("−30 °C", "20 °C", "80 °C"), upwards(Stocked.middling()));
    Part coil = SampleRange.parts(Family.COIL_SPRING).get(0);
    assertEquals(List.of("80 °C", "20 °C", "−30 °C"), upwards(coil));
  }

  @Test
  void noCurveLeavesTheChart() {
    for (Family family : Family.values()) {
      Part part =
          SampleRange.parts(family).stream()
              .filter(any -> any.spring().force() > 0)
              .findFirst()
              .orElseThrow();
      Drawing chart = ForceChart.withFastLimit(part, Stocked.ENGLISH);
      for (Graphic shape : chart.shapes()) {
        assertTrue(
            !(shape instanceof Graphic.Path) || shape.bounds().top() <= 20 + 1e-9, "" + part);
      }
    }
  }

  private static List<String> upwards(Part part) {
    return ForceChart.of(part, Stocked.ENGLISH).shapes().stream()
        .filter(Graphic.Text.class::isInstance)
        .map(Graphic.Text.class::cast)
        .filter(text -> text.text().endsWith("°C"))
        .sorted(Comparator.comparingDouble(text -> text.at().y()))
        .map(text -> Printed.spaced(text.text()))
        .toList();
  }
}
