package org.staywright.document.chart;

import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.spring.Kinds;
import org.staywright.spring.LockingSpring;
import org.staywright.wording.Wording;

/** The charts of a part: its force over its stroke, and what only its family has. */
public final class FamilyCharts implements Kinds<List<FamilyCharts.Chart>> {

  /**
   * @param heading above it
   * @param drawing of it
   * @param about how to read it
   */
  public record Chart(String heading, Drawing drawing, String about) {}

  private final Part part;
  private final Wording wording;

  private FamilyCharts(Part part, Wording wording) {
    this.part = part;
    this.wording = wording;
  }

  /** Beside the force over the stroke; none for what has nothing of its own. */
  public static List<Chart> of(Part part, Wording wording) {
    return part.spring().told(new FamilyCharts(part, wording));
  }

  @Override
  public List<Chart> plain() {
    return List.of();
  }

  @Override
  public List<Chart> locking(LockingSpring locking) {
    return List.of(
        chart("locked-forces", LockedChart.forces(part, wording)),
        chart("locked-stiffness", LockedChart.stiffness(part, wording)));
  }

  @Override
  public List<Chart> damper(Damper damper) {
    return List.of(chart("damper-forces", DamperChart.of(part.number(), damper, wording)));
  }

  private Chart chart(String name, Drawing drawing) {
    return new Chart(
        wording.text("document.chart." + name),
        drawing,
        wording.text("document.chart." + name + ".about"));
  }
}
