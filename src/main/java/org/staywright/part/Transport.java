package org.staywright.part;

import static org.staywright.unit.Unit.ATMOSPHERE;

import org.staywright.spring.GasFilled;

/**
 * What can be computed of the conditions under which ADR, and the texts of {@link TransportText},
 * let a gas spring travel as an ordinary article. Information only: burst pressure, material,
 * quality assurance and fire test are for the supplier to declare, and local codes decide.
 *
 * <p>Source: ADR 2023, 3.3.1, special provision 283 (figures in {@code shared/regulations.csv}).
 *
 * @param gasSpace where it is greatest, m³
 * @param charge gauge pressure where the gas has most room, 20 °C, Pa
 */
public record Transport(double gasSpace, double charge) {

  /** 1.6 L. */
  public static final double MOST_GAS_SPACE = 1.6e-3;

  /** 280 bar. */
  public static final double MOST_CHARGE = 280e5;

  /** 80 bar·L, in Pa·m³. */
  public static final double MOST_PRODUCT = 80 * 1e5 * 1e-3;

  /** Up to 0.5 L a burst pressure of four times the charge is asked for, above it five times. */
  static final double SMALL = 0.5e-3;

  public static Transport of(GasFilled spring) {
    return new Transport(spring.cylinder().gasVolume(), spring.restPressure() - ATMOSPHERE);
  }

  /** Pa·m³. */
  public double product() {
    return gasSpace * charge;
  }

  /** True where all three figures are kept. */
  public boolean withinFigures() {
    return gasSpace <= MOST_GAS_SPACE && charge <= MOST_CHARGE && product() <= MOST_PRODUCT;
  }

  /** Burst pressure over charge that the supplier must declare. */
  public int burstFactor() {
    return gasSpace <= SMALL ? 4 : 5;
  }
}
