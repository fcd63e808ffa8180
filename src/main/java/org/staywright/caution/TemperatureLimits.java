package org.staywright.caution;

import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.Caution.Severity;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Outside its limits a seal leaks or hardens, and heat raises the pressure. */
final class TemperatureLimits implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return Optional.of(
        new Caution(
            "temperature-limits",
            Severity.WARNING,
            List.of(
                new Figure(part.limits().coldest(), Unit.CELSIUS, 0),
                new Figure(part.limits().hottest(), Unit.CELSIUS, 0)),
            COMMON_PRACTICE));
  }
}
