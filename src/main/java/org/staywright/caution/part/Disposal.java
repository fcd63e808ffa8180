package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** Gas and oil have to be let out before the rest is scrap; a bare coil has neither. */
public final class Disposal implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    if (!part.family().hasTube()) {
      return Optional.empty();
    }
    return Optional.of(
        part.charge()
            .map(
                gas ->
                    Caution.note(
                        "disposal",
                        Figure.of(gas.restPressure() - Unit.ATMOSPHERE, Unit.BAR),
                        new Figure(gas.cylinder().oilVolume(), Unit.MILLILITRE, 1)))
            .orElse(Caution.note("disposal-oil")));
  }
}
