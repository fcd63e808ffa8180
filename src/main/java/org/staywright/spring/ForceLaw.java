package org.staywright.spring;

import java.util.function.DoubleUnaryOperator;

/**
 * The force of one specimen of a spring over its compression from full extension: positive where it
 * pushes its ends apart, negative where it pulls them together. Compressions beyond the stroke are
 * computed, not clamped. SI.
 */
public interface ForceLaw {

  Spring spring();

  /** Slow force without friction over the compression, at one temperature, N over m. */
  DoubleUnaryOperator slow(double kelvin);

  /** A stroke too fast for heat to pass, from one compression to another. */
  Fast fast(double from, double to, double kelvin);

  /** Absolute pressure after a slow stroke, Pa; that of the air where there is no gas. */
  double pressure(double compression, double kelvin);

  /** Slow force at one place, without friction, N. */
  default double force(double compression, double kelvin) {
    return slow(kelvin).applyAsDouble(compression);
  }

  /** Slow force while the spring grows longer, N. */
  default double extending(double compression, double kelvin) {
    return force(compression, kelvin) - spring().friction(kelvin);
  }

  /** Slow force while the spring grows shorter, N. */
  default double compressing(double compression, double kelvin) {
    return force(compression, kelvin) + spring().friction(kelvin);
  }

  /** Size of the slow force while the spring gives back what it holds: F1 and F2, N. */
  default double giving(double compression, double kelvin) {
    return size(compression, kelvin) - spring().friction(kelvin);
  }

  /** Size of the slow force while it is strained: F3 and F4, N. */
  default double taking(double compression, double kelvin) {
    return size(compression, kelvin) + spring().friction(kelvin);
  }

  private double size(double compression, double kelvin) {
    return spring().sense() * force(compression, kelvin);
  }

  /**
   * How near to constant its slow force comes in a used travel: the least over the greatest, 1
   * where it is the same throughout.
   *
   * @param from compression, m
   * @param to compression, m
   */
  default double constancy(double from, double to, double kelvin) {
    DoubleUnaryOperator force = slow(kelvin);
    double least = Double.POSITIVE_INFINITY;
    double greatest = 0;
    for (int i = 0; i <= 40; i++) {
      double size = Math.abs(force.applyAsDouble(from + (to - from) * i / 40));
      least = Math.min(least, size);
      greatest = Math.max(greatest, size);
    }
    return greatest == 0 ? 1 : least / greatest;
  }

  /** The fast limit of a stroke. */
  interface Fast {

    /** Without friction, N. */
    double force(double compression);

    /** Absolute, Pa. */
    double pressure(double compression);
  }
}
