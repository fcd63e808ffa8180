package org.staywright.spring;

import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import org.staywright.unit.Bound;

/**
 * A column or strut that locks. Open, a passage joins both sides of its piston and it is the gas
 * spring it is made of; shut, gas or oil is caught on either side.
 *
 * @param open the spring with its passage open
 * @param fullSideDeadVolume room of the full side beyond the stroke, net of oil, above zero, m³
 * @param rodSideDeadVolume room of the rod's side at full extension, an outer sleeve counted in,
 *     net of oil, above zero, m³
 * @param locking what gives way
 * @param lockForce greatest force on the locked spring beyond its open force, N
 */
public record LockingSpring(
    GasSpring open,
    double fullSideDeadVolume,
    double rodSideDeadVolume,
    Locking locking,
    double lockForce)
    implements GasFilled {

  private static final Bound ROOM_LEFT = new Bound(0, true, Double.POSITIVE_INFINITY, false, "m³");

  public LockingSpring {
    ROOM_LEFT.require("fullSideDeadVolume", fullSideDeadVolume);
    ROOM_LEFT.require("rodSideDeadVolume", rodSideDeadVolume);
  }

  @Override
  public Cylinder cylinder() {
    return open.cylinder();
  }

  @Override
  public double force() {
    return open.force();
  }

  @Override
  public Optional<GasSpring> asGasSpring() {
    return Optional.of(open);
  }

  @Override
  public double drivingArea() {
    return open.drivingArea();
  }

  /** Room of the full side, A_b·(s − x0) + its dead volume, 20 °C, m³. */
  public double fullSide(double compression) {
    return cylinder().boreArea() * (stroke() - compression) + fullSideDeadVolume;
  }

  /** Room of the rod's side, A_a·x0 + its dead volume, 20 °C, m³. */
  public double rodSide(double compression) {
    return cylinder().ringArea() * compression + rodSideDeadVolume;
  }

  /** What the gas volume has beyond the two sides at full extension; nothing, if it is true, m³. */
  public double volumeAmiss() {
    return cylinder().gasVolume() - fullSide(0) - rodSide(0);
  }

  /** As delivered, locked at one place. */
  public LockedSpring locked(double compression, double kelvin) {
    return new LockedSpring(this, charged().gasMass(), compression, kelvin);
  }

  /** What the oil's growth leaves of the room of both sides, a share. */
  double roomLeft(double compression, double kelvin) {
    return gasVolume(compression, kelvin) / gasVolume(compression, ROOM);
  }

  /**
   * Whether it only gets softer the further it is out: so it is, for a gas that follows Boyle,
   * where the rod's side is as large as a sleeve makes it.
   */
  public boolean softensSteadily() {
    return rodSideDeadVolume
        >= Math.pow(cylinder().ringArea() / cylinder().boreArea(), 1.5) * fullSide(0);
  }

  /**
   * The outermost wall that holds gas. A rod side so large that it must lie in a sleeve is taken as
   * one around the inner tube, no longer than the stroke, both walls alike: that makes its bore
   * wide and errs on the safe side. π·r² = A_b + room/stroke + 2π·r_b·(r_o − r).
   */
  @Override
  public ThickTube tube() {
    ThickTube inner = cylinder().tube();
    if (!softensSteadily()) {
      return inner;
    }
    double bore = inner.innerRadius();
    double outside = inner.outerRadius();
    double room = (cylinder().boreArea() + rodSideDeadVolume / stroke()) / Math.PI;
    double inside = Math.sqrt(bore * bore + room + 2 * bore * outside) - bore;
    return new ThickTube(inside, outside);
  }

  @Override
  public <T> T told(Kinds<T> kinds) {
    return kinds.locking(this);
  }
}
