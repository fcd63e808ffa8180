package org.staywright.form.time;

import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Unit;

/** In what the travel of a job is told: it turns or it shifts. */
public enum TravelUnit {
  DEG(Unit.DEGREE),
  MM(Unit.MILLIMETRE);

  private final Unit unit;

  TravelUnit(Unit unit) {
    this.unit = unit;
  }

  public static TravelUnit of(Mechanism mechanism) {
    return mechanism.movement() == Mechanism.Movement.TURNS ? DEG : MM;
  }

  public double of(double si) {
    return unit.of(si);
  }

  public double[] of(double[] si) {
    return unit.of(si);
  }
}
