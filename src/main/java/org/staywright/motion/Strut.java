package org.staywright.motion;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.staywright.gas.Isotherm;
import org.staywright.gas.NitrogenViscosity;
import org.staywright.gas.Oil;
import org.staywright.spring.ChargedSpring;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.SpeedLaw;

/**
 * One spring as it moves: what drives it, what damps it, and the temperature of its gas.
 *
 * <p>The gas follows the first law with the equation of state, m·c_v·dT/dt = −T·(∂p/∂T)_v·dV/dt +
 * heat; the wall gives or takes m·c_v·(T_wall − T)/τ. What the gas loses in the orifice warms it;
 * what oil loses warms the oil, which is taken to stay as it is. A damper's gas apart is taken to
 * keep the wall's temperature.
 */
public final class Strut {

  /** No mount of a mechanism comes near this, m/s. */
  private static final double FASTEST = 1000;

  private final ForceLaw law;
  private final double kelvin;
  private final double friction;
  private final @Nullable Orifice orifice;
  private final OilZones zones;
  private final double wallTime;
  private final @Nullable ChargedSpring gas;
  private final double area;
  private final DoubleUnaryOperator plain;
  private final SpeedLaw resistance;
  private final Orifice.Fluid oil;

  /**
   * @param law of the specimen
   * @param kelvin temperature of its surroundings, wall, oil and friction, K
   * @param orifice null where nothing is throttled
   * @param zones where oil is throttled
   * @param wallTime time constant of the heat exchange between gas and wall, s; infinite for none
   */
  public Strut(
      ForceLaw law, double kelvin, @Nullable Orifice orifice, OilZones zones, double wallTime) {
    this.law = law;
    this.kelvin = kelvin;
    this.orifice = orifice;
    this.zones = zones;
    this.wallTime = wallTime;
    friction = law.spring().friction(kelvin);
    gas = law instanceof ChargedSpring charged ? charged : null;
    area = gas == null ? 0 : gas.spring().drivingArea();
    resistance = law.spring() instanceof SpeedLaw damper ? damper : speed -> 0;
    plain = law.slow(kelvin);
    oil = new Liquid(Oil.VG_22.density(kelvin), Oil.VG_22.viscosity(kelvin));
  }

  public ForceLaw law() {
    return law;
  }

  public double kelvin() {
    return kelvin;
  }

  /** Half of the hysteresis, N. */
  public double friction() {
    return friction;
  }

  public OilZones zones() {
    return zones;
  }

  /** Seconds; infinite where no heat passes. */
  public double wallTime() {
    return wallTime;
  }

  boolean hasGas() {
    return gas != null;
  }

  boolean damped() {
    return orifice != null;
  }

  /** Internal energy of the gas, J; 0 without gas. */
  double energy(double compression, double gasKelvin) {
    return gas == null
        ? 0
        : gas.gasMass() * Isotherm.at(gasKelvin).state(gas.density(compression, kelvin)).energy();
  }

  /** Room of the gas, m³; 0 without gas. */
  double volume(double compression) {
    return gas == null ? 0 : gas.spring().gasVolume(compression, kelvin);
  }

  /** (p − p_a)·A. */
  private double push(Isotherm.State state) {
    return (state.pressure() - ATMOSPHERE) * area;
  }

  /**
   * What it does at one moment.
   *
   * @param compression m
   * @param speed of compression, m/s
   * @param gasKelvin temperature of the gas, K
   * @param oiled whether oil passes the orifice
   */
  Instant at(double compression, double speed, double gasKelvin, boolean oiled) {
    // A step that is only tried may go beyond the stroke, where no law holds, or faster than
    // anything goes; the integrator rejects it by its error, which must stay a number.
    double within = Math.max(0, Math.min(law.spring().stroke(), compression));
    double pace = Math.max(-FASTEST, Math.min(FASTEST, speed));
    if (gas == null) {
      double damping = Math.abs(resistance.force(pace));
      return new Instant(plain.applyAsDouble(within), damping, 0, 0, 0, 0);
    }
    double density = gas.density(within, kelvin);
    // A step that is only tried may go too far; one that is kept is looked at by MotionExtremes.
    double known =
        Math.max(Isotherm.TEMPERATURES.low(), Math.min(gasKelvin, Isotherm.TEMPERATURES.high()));
    Isotherm.State state = Isotherm.at(known).state(density);
    double push = push(state);
    double damping = 0;
    double mach = 0;
    if (orifice != null && pace != 0) {
      Throttle throttle = throttle(orifice, state, known, density, oiled);
      damping = throttle.force(pace);
      mach = throttle.mach(pace);
    }
    double capacity = gas.gasMass() * state.cv();
    double squeezing = known * state.pressurePerKelvin() * area * pace / capacity;
    double warming = oiled ? 0 : damping * Math.abs(pace);
    double exchange = (kelvin - gasKelvin) / wallTime;
    return new Instant(
        push,
        damping,
        warming,
        squeezing + warming / capacity + exchange,
        exchange * capacity,
        mach);
  }

  /** What it resists a speed of compression with, in gas of the wall's temperature, N. */
  public double damping(double compression, double speed) {
    return at(compression, speed, kelvin, false).damping();
  }

  /**
   * Steady speed of the free rod as it comes out, m/s: the gas drives what the orifice lets pass.
   *
   * @param compression where, m
   * @param oiled whether oil passes the orifice
   * @throws IllegalStateException where no gas is throttled
   */
  public double freeSpeed(double compression, boolean oiled) {
    if (gas == null || orifice == null) {
      throw new IllegalStateException("no gas that an orifice throttles");
    }
    double density = gas.density(compression, kelvin);
    Isotherm.State state = Isotherm.at(kelvin).state(density);
    double force = Math.max(0, Math.abs(push(state)) - friction);
    return throttle(orifice, state, kelvin, density, oiled).speedAt(force, area < 0);
  }

  /**
   * Whether oil would pass the orifice.
   *
   * @param compression m
   * @param extending which way it moves
   * @param rodRise sine of the rod end's direction, +1 straight up
   */
  public boolean oiled(double compression, boolean extending, double rodRise) {
    return zones.depth(compression, extending, rodRise) > 0;
  }

  /** Slow force with what damps it, the gas as warm as the wall. */
  public Stand stand(double compression, boolean oiled) {
    if (gas == null) {
      return new Stand(plain.applyAsDouble(compression), null);
    }
    double density = gas.density(compression, kelvin);
    Isotherm.State state = Isotherm.at(kelvin).state(density);
    return new Stand(
        push(state), orifice == null ? null : throttle(orifice, state, kelvin, density, oiled));
  }

  private Throttle throttle(
      Orifice orifice, Isotherm.State state, double known, double density, boolean oiled) {
    return new Throttle(orifice, oiled ? oil : new Gas(state, known, density));
  }

  /** Against the motion, of a spring that is no gas spring but damps by its speed; N. */
  public double resistance(double speed) {
    return Math.abs(resistance.force(speed));
  }

  /**
   * @param push without friction and damping, N
   * @param throttle what its fluid must pass, null where nothing is throttled
   */
  public record Stand(double push, @Nullable Throttle throttle) {}

  /**
   * @param push without friction and damping, N
   * @param damping against the motion, not below zero, N
   * @param warming power of damping that stays in the gas, W
   * @param heating of the gas, K/s
   * @param fromWall heat that the wall gives, W
   * @param mach speed in the orifice over that of sound
   */
  record Instant(
      double push, double damping, double warming, double heating, double fromWall, double mach) {

    /** Of a spring that has failed. */
    static final Instant IDLE = new Instant(0, 0, 0, 0, 0, 0);
  }

  private record Liquid(double density, double viscosity) implements Orifice.Fluid {

    @Override
    public double speedOfSound() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public double pressure() {
      return 0;
    }
  }

  private record Gas(Isotherm.State state, double kelvin, double density) implements Orifice.Fluid {

    @Override
    public double viscosity() {
      return NitrogenViscosity.at(kelvin, density);
    }

    @Override
    public double speedOfSound() {
      return state.speedOfSound();
    }

    @Override
    public double pressure() {
      return state.pressure();
    }
  }
}
