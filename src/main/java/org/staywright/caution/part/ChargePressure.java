package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** The gas stays in a spring that no longer pushes: gauge pressure as filled, 20 °C, at rest. */
public final class ChargePressure implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return part.charge()
        .map(gas -> Figure.of(gas.restPressure() - Unit.ATMOSPHERE, Unit.BAR))
        .map(gauge -> Caution.danger("charge-pressure", gauge));
  }
}
