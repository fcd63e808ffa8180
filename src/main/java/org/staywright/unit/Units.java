package org.staywright.unit;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The system of units that a reader wants to see; inside and in JSON nothing depends on it. */
public enum Units {
  METRIC("metric", Map.of()),
  INCH_POUND(
      "inch-pound",
      Map.ofEntries(
          Map.entry(Unit.MILLIMETRE, new Shown(Unit.INCH, 2)),
          Map.entry(Unit.SQUARE_MILLIMETRE, new Shown(Unit.SQUARE_INCH, 3)),
          Map.entry(Unit.MILLILITRE, new Shown(Unit.CUBIC_INCH, 1)),
          Map.entry(Unit.LITRE, new Shown(Unit.CUBIC_INCH, -1)),
          Map.entry(Unit.NEWTON, new Shown(Unit.POUND_FORCE, 1)),
          Map.entry(Unit.NEWTON_METRE, new Shown(Unit.POUND_FORCE_INCH, -1)),
          Map.entry(Unit.JOULE, new Shown(Unit.FOOT_POUND_FORCE, 0)),
          Map.entry(Unit.KILOGRAM, new Shown(Unit.POUND, 0)),
          Map.entry(Unit.BAR, new Shown(Unit.PSI, -1)),
          Map.entry(Unit.MEGAPASCAL, new Shown(Unit.PSI, -2)),
          Map.entry(Unit.GIGAPASCAL, new Shown(Unit.PSI, -5)),
          Map.entry(Unit.NEWTON_PER_MILLIMETRE, new Shown(Unit.POUND_FORCE_PER_INCH, -1)),
          Map.entry(Unit.MILLIMETRE_PER_SECOND, new Shown(Unit.INCH_PER_SECOND, 1)),
          Map.entry(Unit.METRE_PER_SECOND, new Shown(Unit.FOOT_PER_SECOND, 0)),
          Map.entry(Unit.CELSIUS, new Shown(Unit.FAHRENHEIT, 0))));

  /**
   * @param unit in place of the metric one
   * @param decimals more that it needs to tell as much
   */
  private record Shown(Unit unit, int decimals) {}

  private final String code;
  private final Map<Unit, Shown> shown;

  Units(String code, Map<Unit, Shown> shown) {
    this.code = code;
    this.shown = shown;
  }

  public static Optional<Units> of(String code) {
    return Stream.of(values()).filter(units -> units.code.equals(code)).findFirst();
  }

  public String code() {
    return code;
  }

  /** The unit to show in place of a metric one; itself where people of both systems use it. */
  public Unit instead(Unit metric) {
    return shown.containsKey(metric) ? shown.get(metric).unit : metric;
  }

  /** Decimals that tell as much in the unit shown as some decimals in the metric one. */
  public int decimals(Unit metric, int decimals) {
    return shown.containsKey(metric)
        ? Math.max(0, decimals + shown.get(metric).decimals)
        : decimals;
  }
}
