package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Outside its limits a seal leaks or hardens, a coil creeps, and heat raises a gas's pressure. */
public final class TemperatureLimits implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    String code = part.charge().isPresent() ? "temperature-limits" : "temperature-limits-dry";
    return Optional.of(
        Caution.warning(
            code,
            Figure.of(part.limits().coldest(), Unit.CELSIUS),
            Figure.of(part.limits().hottest(), Unit.CELSIUS)));
  }
}
