package org.staywright.unit;

import static org.staywright.unit.Dimension.ANGLE;
import static org.staywright.unit.Dimension.AREA;
import static org.staywright.unit.Dimension.ENERGY;
import static org.staywright.unit.Dimension.FORCE;
import static org.staywright.unit.Dimension.LENGTH;
import static org.staywright.unit.Dimension.MASS;
import static org.staywright.unit.Dimension.MOMENT;
import static org.staywright.unit.Dimension.PRESSURE;
import static org.staywright.unit.Dimension.SHARE;
import static org.staywright.unit.Dimension.SPEED;
import static org.staywright.unit.Dimension.STIFFNESS;
import static org.staywright.unit.Dimension.TEMPERATURE;
import static org.staywright.unit.Dimension.TIME;
import static org.staywright.unit.Dimension.VOLUME;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * Units at the boundary and their exact SI equivalents.
 *
 * <p>Source: NIST Special Publication 811 (2008), Appendix B; the factors of inch, pound,
 * pound-force and kilogram-force are exact there.
 */
public enum Unit {
  MILLIMETRE("mm", LENGTH, "0.001"),
  CENTIMETRE("cm", LENGTH, "0.01"),
  METRE("m", LENGTH, "1"),
  INCH("in", LENGTH, "0.0254"),
  FOOT("ft", LENGTH, "0.3048"),
  SQUARE_MILLIMETRE("mm²", AREA, "0.000001"),
  SQUARE_INCH("in²", AREA, "0.00064516"),
  MILLILITRE("ml", VOLUME, "0.000001"),
  LITRE("L", VOLUME, "0.001"),
  CUBIC_INCH("in³", VOLUME, "0.000016387064"),
  NEWTON("N", FORCE, "1"),
  KILONEWTON("kN", FORCE, "1000"),
  POUND_FORCE("lbf", FORCE, "4.4482216152605"),
  KILOGRAM_FORCE("kgf", FORCE, "9.80665"),
  NEWTON_METRE("N·m", MOMENT, "1"),
  POUND_FORCE_INCH("lbf·in", MOMENT, "0.1129848290276167"),
  POUND_FORCE_FOOT("lbf·ft", MOMENT, "1.3558179483314004"),
  JOULE("J", ENERGY, "1"),
  FOOT_POUND_FORCE("ft·lbf", ENERGY, "1.3558179483314004"),
  KILOGRAM("kg", MASS, "1"),
  GRAM("g", MASS, "0.001"),
  POUND("lb", MASS, "0.45359237"),
  OUNCE("oz", MASS, "0.028349523125"),
  BAR("bar", PRESSURE, "100000"),
  MEGAPASCAL("MPa", PRESSURE, "1000000"),
  GIGAPASCAL("GPa", PRESSURE, "1000000000"),
  PSI("psi", PRESSURE, new BigFraction(44_482_216_152_605L, 6_451_600_000L)),
  NEWTON_PER_MILLIMETRE("N/mm", STIFFNESS, "1000"),
  POUND_FORCE_PER_INCH("lbf/in", STIFFNESS, new BigFraction(44_482_216_152_605L, 254_000_000_000L)),
  MILLIMETRE_PER_SECOND("mm/s", SPEED, "0.001"),
  METRE_PER_SECOND("m/s", SPEED, "1"),
  INCH_PER_SECOND("in/s", SPEED, "0.0254"),
  FOOT_PER_SECOND("ft/s", SPEED, "0.3048"),
  SECOND("s", TIME, "1"),
  CELSIUS("°C", TEMPERATURE, BigFraction.ONE, new BigFraction(27_315, 100)),
  FAHRENHEIT("°F", TEMPERATURE, new BigFraction(5, 9), new BigFraction(45_967, 180)),
  DEGREE("°", ANGLE, Math.PI / 180),
  PERCENT("%", SHARE, "0.01");

  /** Standard acceleration of gravity, m/s², exact (SP 811, 3rd CGPM 1901). */
  public static final double STANDARD_GRAVITY = 9.80665;

  /** Standard atmosphere, Pa, exact (SP 811): the pressure outside every spring here. */
  public static final double ATMOSPHERE = 101_325;

  /** 20 °C in kelvin, the temperature that forces are quoted at. */
  public static final double ROOM = 293.15;

  private final String symbol;
  private final Dimension dimension;
  private final BigFraction exactFactor;
  private final BigFraction exactOffset;
  private final double factor;
  private final double offset;

  Unit(String symbol, Dimension dimension, String factor) {
    this(symbol, dimension, TypedNumber.fraction(new BigDecimal(factor)));
  }

  Unit(String symbol, Dimension dimension, BigFraction factor) {
    this(symbol, dimension, factor, BigFraction.ZERO);
  }

  Unit(String symbol, Dimension dimension, BigFraction factor, BigFraction offset) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.exactFactor = factor;
    this.exactOffset = offset;
    this.factor = factor.bigDecimalValue(40, RoundingMode.HALF_EVEN.ordinal()).doubleValue();
    this.offset = offset.bigDecimalValue(40, RoundingMode.HALF_EVEN.ordinal()).doubleValue();
  }

  /** A unit whose factor is no fraction: nothing else measures its dimension. */
  Unit(String symbol, Dimension dimension, double factor) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.exactFactor = BigFraction.ONE;
    this.exactOffset = BigFraction.ZERO;
    this.factor = factor;
    this.offset = 0;
  }

  /** The unit of a symbol, empty for one that is not there. */
  public static Optional<Unit> of(String symbol) {
    return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
  }

  public Dimension dimension() {
    return dimension;
  }

  /** True where a value of 0 means nothing at all: not so for degrees of temperature. */
  public boolean startsAtZero() {
    return exactOffset.equals(BigFraction.ZERO);
  }

  /**
   * A value in this unit as a value in another of its dimension, without rounding.
   *
   * @throws IllegalArgumentException for a unit of another dimension
   */
  public BigFraction to(Unit other, BigFraction value) {
    if (other.dimension != dimension) {
      throw new IllegalArgumentException(this + " and " + other);
    }
    return value
        .multiply(exactFactor)
        .add(exactOffset)
        .subtract(other.exactOffset)
        .divide(other.exactFactor);
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

  /** Each of them in this unit. */
  public double[] of(double[] si) {
    return DoubleStream.of(si).map(this::of).toArray();
  }
}
