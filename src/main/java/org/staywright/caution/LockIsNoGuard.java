package org.staywright.caution;

import java.util.Optional;
import org.staywright.caution.Caution.Figure;
import org.staywright.part.Part;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Unit;

/** A lock holds what it was made to hold, as long as it is whole: nobody's life hangs on it. */
final class LockIsNoGuard implements CautionRule {

  @Override
  public Optional<Caution> of(Part part) {
    return part.spring() instanceof LockingSpring locking
        ? Optional.of(Caution.danger("lock-no-guard", Figure.of(locking.lockForce(), Unit.NEWTON)))
        : Optional.empty();
  }
}
