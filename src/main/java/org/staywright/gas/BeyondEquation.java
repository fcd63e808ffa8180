package org.staywright.gas;

import org.staywright.unit.Bound;

/**
 * Thrown where a state of the gas lies beyond what its equation of state is good for. That is no
 * fault of one input: all that was asked leads there together.
 */
public final class BeyondEquation extends RuntimeException {

  /** What left its bounds; in SI. */
  public enum Quantity {
    TEMPERATURE,
    PRESSURE,
    DENSITY
  }

  private final Quantity quantity;
  private final double value;
  private final transient Bound bound;

  /**
   * @param value where it went, K, Pa or kg/m³
   * @param bound where it may be, in the same unit
   */
  public BeyondEquation(Quantity quantity, double value, Bound bound) {
    super(quantity + " " + value + ", " + bound.text());
    this.quantity = quantity;
    this.value = value;
    this.bound = bound;
  }

  /** The value, where it lies inside. */
  static double within(Quantity quantity, double value, Bound bound) {
    if (!bound.holds(value)) {
      throw new BeyondEquation(quantity, value, bound);
    }
    return value;
  }

  public Quantity quantity() {
    return quantity;
  }

  public double value() {
    return value;
  }

  public Bound bound() {
    return bound;
  }
}
