package org.staywright.caution.part;

import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Figure;
import org.staywright.caution.CautionRule;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;

/** A coil has no charge to lose, but it gives back what was put into it: ∫F dx over the stroke. */
public final class StoredEnergy implements CautionRule {

  private static final int STEPS = 200;

  @Override
  public Optional<Caution> of(Part part) {
    return part.family() == Family.COIL_SPRING
        ? Optional.of(Caution.danger("stored-energy", Figure.of(energy(part.spring()), Unit.JOULE)))
        : Optional.empty();
  }

  private static double energy(Spring spring) {
    DoubleUnaryOperator force = spring.law().slow(ROOM);
    double step = spring.stroke() / STEPS;
    double sum = 0;
    for (int i = 0; i < STEPS; i++) {
      sum += force.applyAsDouble((i + 0.5) * step) * step;
    }
    return sum;
  }
}
