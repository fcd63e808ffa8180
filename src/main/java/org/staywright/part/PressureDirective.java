package org.staywright.part;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.Optional;
import org.staywright.spring.GasFilled;

/**
 * How a vessel for a gas of group 2, nitrogen, stands under the European directive on pressure
 * equipment. Information only: who makes it assesses it, and local codes decide.
 *
 * <p>Source: Directive 2014/68/EU, Art. 1(1), Art. 4(1)(a)(i) and Annex II, table 2, in {@code
 * shared/regulations.csv}; the lines between the categories are from memory. The table's steps at
 * low pressure and large volume are left out: no spring comes near.
 *
 * @param volume V: the room inside, gas and oil, m³
 * @param pressure PS: highest gauge pressure it is made for, Pa
 */
public record PressureDirective(double volume, double pressure) {

  /** Art. 1(1): up to 0.5 bar the directive does not apply. */
  public static final double LEAST_PRESSURE = 0.5e5;

  /** Art. 4(1)(a)(i): up to 1 L only the pressure counts. */
  public static final double SMALL = 1e-3;

  /** Art. 4(1)(a)(i): above 1000 bar it applies whatever the volume. */
  public static final double MOST_PRESSURE = 1000e5;

  /** Art. 4(1)(a)(i): 50 bar·L, in Pa·m³. */
  public static final double MOST_PRODUCT = 50 * 1e5 * 1e-3;

  /** Annex II, table 2, from memory: where the categories I, II and III end, Pa·m³. */
  private static final double[] PRODUCTS = {200 * 1e5 * 1e-3, 1000 * 1e5 * 1e-3, 3000 * 1e5 * 1e-3};

  /** Annex II, table 2, from memory: where category III ends up to 1 L, Pa. */
  private static final double SMALL_THIRD = 3000e5;

  /** Where it stands. */
  public enum Standing implements Coded {
    OUTSIDE,
    /** Art. 4(3). */
    SOUND_PRACTICE,
    CATEGORY_I,
    CATEGORY_II,
    CATEGORY_III,
    CATEGORY_IV
  }

  /** Of the gas a part holds, at its highest pressure; empty where it holds none. */
  public static Optional<PressureDirective> of(Part part) {
    return part.charge()
        .map(
            gas ->
                new PressureDirective(
                    gas.cylinder().gasVolume() + gas.cylinder().oilVolume(),
                    highest(part, gas) - ATMOSPHERE));
  }

  /** The part's limit; without one, the pressure where the gas has least room and is hottest. */
  private static double highest(Part part, GasFilled gas) {
    double limit = part.limits().pressure();
    return Double.isFinite(limit)
        ? limit
        : gas.law().pressure(gas.stroke() - gas.restCompression(), part.limits().hottest());
  }

  /** Pa·m³. */
  public double product() {
    return volume * pressure;
  }

  public Standing standing() {
    if (pressure <= LEAST_PRESSURE) {
      return Standing.OUTSIDE;
    }
    if (volume <= SMALL) {
      return pressure <= MOST_PRESSURE
          ? Standing.SOUND_PRACTICE
          : pressure <= SMALL_THIRD ? Standing.CATEGORY_III : Standing.CATEGORY_IV;
    }
    if (product() <= MOST_PRODUCT) {
      return Standing.SOUND_PRACTICE;
    }
    int above = 0;
    while (above < PRODUCTS.length && product() > PRODUCTS[above]) {
      above++;
    }
    return Standing.values()[Standing.CATEGORY_I.ordinal() + above];
  }
}
