package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** The gas stays in a spring that no longer pushes: gauge pressure as filled, 20 °C, extended. */
final class ChargePressure implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return part.gas()
        .map(
            gas ->
                new Caution(
                    "charge-pressure",
                    Severity.DANGER,
                    List.of(new Figure(gas.restPressure() - Unit.ATMOSPHERE, Unit.BAR, 0)),
                    COMMON_PRACTICE));
  }
}
