package org.staywright.motion;

import org.staywright.unit.Bound;

/**
 * The hole in the piston that what fills the tube must pass: Δp = ρu²/(2C_d²) + 32μ·l·u/d_o².
 *
 * <p>Sources: turbulent part, discharge through an orifice (any text on hydraulics, e.g. M. G.
 * Rabie, Fluid Power Engineering, ch. 2); laminar part, Hagen–Poiseuille over the hole's length.
 *
 * @param diameter d_o, m
 * @param length l, m
 * @param compressionFlowFactor area open when compressing over that when extending: more holes of
 *     the same kind
 * @param ring area between rod and bore that drives the flow, A_a, m²
 */
public record Orifice(double diameter, double length, double compressionFlowFactor, double ring) {

  /** Sharp-edged: Encyclopaedia Britannica, 11th ed., Hydraulics. */
  static final double SHARP = 0.62;

  /** Short tube, the jet filling it again: engineering.wikia.com, Orifice equation. */
  static final double SHORT_TUBE = 0.8;

  /** From here on a hole is a short tube, length over diameter (from memory). */
  private static final double TUBE_FROM = 2;

  /** Beyond the speed of sound each this share of it asks for one more pressure of the gas. */
  private static final double CHOKED_SHARE = 0.1;

  public Orifice {
    Bound.above(0, 1, "m").require("orificeDiameter", diameter);
    Bound.between(0, 10, "m").require("orificeLength", length);
    Bound.above(0, 1000, "").require("compressionFlowFactor", compressionFlowFactor);
    Bound.above(0, 1, "m²").require("ringArea", ring);
  }

  /** What comes to the hole. */
  public interface Fluid {

    /** kg/m³. */
    double density();

    /** Pa s. */
    double viscosity();

    /** The speed it cannot pass, m/s; infinite for a liquid. */
    double speedOfSound();

    /** Absolute, Pa. */
    double pressure();
  }

  /** C_d by the hole's shape. */
  public double dischargeCoefficient() {
    return length >= TUBE_FROM * diameter ? SHORT_TUBE : SHARP;
  }

  /**
   * Speed in the hole, m/s.
   *
   * @param speed of the piston, m/s, above zero compressing
   */
  public double speed(double speed) {
    double area = Math.PI / 4 * diameter * diameter * (speed > 0 ? compressionFlowFactor : 1);
    return ring * Math.abs(speed) / area;
  }

  /**
   * Pressure lost at a speed in the hole. A gas gets no faster than sound: beyond it the loss rises
   * so steeply (our limiter, no source) that the piston cannot get faster either.
   *
   * @param through speed in the hole, m/s
   * @return Pa
   */
  public double pressureDrop(double through, Fluid fluid) {
    double coefficient = dischargeCoefficient();
    double turbulent = fluid.density() * through * through / (2 * coefficient * coefficient);
    double over = through / fluid.speedOfSound() - 1;
    double choked = over > 0 ? fluid.pressure() * over / CHOKED_SHARE : 0;
    return turbulent + perSpeed(fluid) * through + choked;
  }

  /** 32μ·l/d_o², Pa s/m. */
  double perSpeed(Fluid fluid) {
    return 32 * fluid.viscosity() * length / (diameter * diameter);
  }

  /**
   * Speed in the hole that a pressure drives, at most that of sound, m/s.
   *
   * @param drop Pa, not below zero
   */
  public double speedAt(double drop, Fluid fluid) {
    double coefficient = dischargeCoefficient();
    double square = fluid.density() / (2 * coefficient * coefficient);
    double linear = perSpeed(fluid);
    // The root of square·u² + linear·u − drop that does not cancel.
    double speed = 2 * drop / (linear + Math.sqrt(linear * linear + 4 * square * drop));
    return Math.min(speed, fluid.speedOfSound());
  }
}
