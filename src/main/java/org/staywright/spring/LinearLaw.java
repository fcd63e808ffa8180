package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.function.DoubleUnaryOperator;

/**
 * A force that grows in step with compression and has no gas behind it.
 *
 * @param spring whose it is
 * @param start force at full extension, 20 °C, N
 * @param rate N/m
 * @param softening share of the force lost per kelvin, 1/K
 */
record LinearLaw(Spring spring, double start, double rate, double softening) implements ForceLaw {

  @Override
  public DoubleUnaryOperator slow(double kelvin) {
    double share = 1 - softening * (kelvin - ROOM);
    return compression -> share * (start + rate * compression);
  }

  @Override
  public Fast fast(double from, double to, double kelvin) {
    DoubleUnaryOperator slow = slow(kelvin);
    return new Fast() {
      @Override
      public double force(double compression) {
        return slow.applyAsDouble(compression);
      }

      @Override
      public double pressure(double compression) {
        return ATMOSPHERE;
      }
    };
  }

  @Override
  public double pressure(double compression, double kelvin) {
    return ATMOSPHERE;
  }
}
