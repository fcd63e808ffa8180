package org.staywright.document.chart;

import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.spring.LockingSpring;
import org.staywright.wording.Wording;

/** The charts of a part: its force over its stroke, and what only its family has. */
public final class FamilyCharts {

  /**
   * @param heading above it
   * @param drawing of it
   * @param about how to read it
   */
  public record Chart(String heading, Drawing drawing, String about) {}

  private FamilyCharts() {}

  /** Beside the force over the stroke; none for what has nothing of its own. */
  public static List<Chart> of(Part part, Wording wording) {
    if (part.spring() instanceof LockingSpring) {
      return List.of(
          chart("locked-forces", LockedChart.forces(part, wording), wording),
          chart("locked-stiffness", LockedChart.stiffness(part, wording), wording));
    }
    if (part.spring() instanceof Damper) {
      return List.of(chart("damper-forces", DamperChart.of(part, wording), wording));
    }
    return List.of();
  }

  private static Chart chart(String name, Drawing drawing, Wording wording) {
    return new Chart(
        wording.text("document.chart." + name),
        drawing,
        wording.text("document.chart." + name + ".about"));
  }
}
