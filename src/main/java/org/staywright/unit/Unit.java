package org.staywright.unit;

/**
 * Units at the boundary and their exact SI equivalents.
 *
 * <p>Source: NIST Special Publication 811 (2008), Appendix B; the factors of inch, pound,
 * pound-force and kilogram-force are exact there.
 */
public enum Unit {
  MILLIMETRE("mm", 1e-3),
  INCH("in", 0.0254),
  SQUARE_MILLIMETRE("mm²", 1e-6),
  MILLILITRE("ml", 1e-6),
  LITRE("L", 1e-3),
  CUBIC_INCH("in³", 0.0254 * 0.0254 * 0.0254),
  NEWTON("N", 1),
  POUND_FORCE("lbf", 4.4482216152605),
  KILOGRAM_FORCE("kgf", 9.80665),
  NEWTON_METRE("N·m", 1),
  JOULE("J", 1),
  POUND_FORCE_INCH("lbf·in", 4.4482216152605 * 0.0254),
  KILOGRAM("kg", 1),
  POUND("lb", 0.45359237),
  BAR("bar", 1e5),
  MEGAPASCAL("MPa", 1e6),
  GIGAPASCAL("GPa", 1e9),
  PSI("psi", 4.4482216152605 / (0.0254 * 0.0254)),
  CELSIUS("°C", 1, 273.15),
  FAHRENHEIT("°F", 5.0 / 9.0, 459.67 * 5.0 / 9.0),
  DEGREE("°", Math.PI / 180),
  PERCENT("%", 1e-2);

  /** Standard acceleration of gravity, m/s², exact (SP 811, 3rd CGPM 1901). */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** Standard atmosphere, Pa, exact (SP 811): the pressure outside every spring here. */
  public static final double ATMOSPHERE = 101_325;

  /** 20 °C in kelvin, the temperature that forces are quoted at. */
  public static final double ROOM = 293.15;

  private final String symbol;
  private final double factor;
  private final double offset;

  Unit(String symbol, double factor) {
    this(symbol, factor, 0);
  }

  Unit(String symbol, double factor, double offset) {
    this.symbol = symbol;
    this.factor = factor;
    this.offset = offset;
  }

  public String symbol() {
    return symbol;
  }

  /** From this unit to SI. */
  public double si(double value) {
    return value * factor + offset;
  }

  /** From SI to this unit. */
  public double of(double si) {
    return (si - offset) / factor;
  }
}
