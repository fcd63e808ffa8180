package org.staywright.caution.part;

import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** A lock holds what it was made to hold, as long as it is whole: nobody's life hangs on it. */
public final class LockIsNoGuard implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return part.lock()
        .map(lock -> Caution.danger("lock-no-guard", Figure.of(lock.lockForce(), Unit.NEWTON)));
  }
}
