package org.staywright.caution.part;

import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;

/** A spring that pulls draws in whatever is let go: its greatest slow force. */
public final class PullsTogether implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    Spring spring = part.spring();
    if (spring.sense() > 0) {
      return Optional.empty();
    }
    double most = Math.abs(spring.law().force(0, ROOM));
    return Optional.of(Caution.warning("pulls-together", Figure.most(most, Unit.NEWTON)));
  }
}
