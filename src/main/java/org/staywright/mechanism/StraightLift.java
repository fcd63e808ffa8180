package org.staywright.mechanism;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.List;
import java.util.OptionalDouble;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Fault;

/**
 * A guided load on a straight line at any inclination; q is how far it has moved from its lowest
 * position, m, and the hand pulls along the line.
 *
 * <p>Statics of the inclined plane: Q = −m·g·sin(direction).
 *
 * @param masses nominal, heaviest and lightest, payload included
 * @param end travel, m
 * @param direction of the travel from +x, counterclockwise, rad
 * @param friction of the guide, N
 * @param mounts of the spring, the moving one at the lowest position
 */
public record StraightLift(
    Masses masses, double end, double direction, double friction, Mounts mounts) implements Rigid {

  public static final String CODE = "straight-lift";

  /** Mounts nearer than this cannot be told from one, m. */
  private static final double LEAST = 1e-3;

  @Override
  public <T> T side(Sides<T> sides) {
    return sides.lift().apply(this);
  }

  @Override
  public Movement movement() {
    return Movement.SHIFTS;
  }

  @Override
  public String code() {
    return CODE;
  }

  @Override
  public List<Fault> faults() {
    if (length(0) < LEAST) {
      return List.of(new Fault("moving", mounts.moving(), "≥ 1 mm", "mounts-coincide"));
    }
    if (length(nearest()) < LEAST) {
      return List.of(new Fault("moving", mounts.moving(), "≥ 1 mm", "mounts-pass-through"));
    }
    return List.of();
  }

  /** Where the moving mount passes the frame mount most closely. */
  private double nearest() {
    Point apart = mounts.moving().minus(mounts.frame());
    double foot = -(apart.x() * Math.cos(direction) + apart.y() * Math.sin(direction));
    return Math.max(0, Math.min(end, foot));
  }

  /** From the frame mount to the moving one. */
  private Point apart(double q) {
    Point start = mounts.moving().minus(mounts.frame());
    return new Point(start.x() + q * Math.cos(direction), start.y() + q * Math.sin(direction));
  }

  @Override
  public double length(double q) {
    return Math.hypot(apart(q).distance(), mounts.lateralOffset());
  }

  @Override
  public double lever(double q) {
    Point apart = apart(q);
    return (apart.x() * Math.cos(direction) + apart.y() * Math.sin(direction)) / length(q);
  }

  @Override
  public Pose pose(double q) {
    double along = Math.cos(direction);
    double upward = Math.sin(direction);
    return new Pose(1, 0, q * along, q * upward, 0, along, upward);
  }

  /** A guided load does not turn: any point will do. */
  @Override
  public Point centreOfMass() {
    return mounts.moving();
  }

  @Override
  public Point up() {
    return new Point(0, 1);
  }

  @Override
  public OptionalDouble inertia() {
    return OptionalDouble.of(masses.nominal());
  }

  @Override
  public StraightLift at(Mounts elsewhere) {
    return new StraightLift(masses, end, direction, friction, elsewhere);
  }

  /** The same moved farther or less far, m. */
  @Override
  public StraightLift to(double travel) {
    return new StraightLift(masses, travel, direction, friction, mounts);
  }

  @Override
  public double lateralOffset() {
    return mounts.lateralOffset();
  }

  @Override
  public RodEnd rodEnd() {
    return mounts.rodEnd();
  }

  @Override
  public OptionalDouble rise(double q) {
    return OptionalDouble.of(apart(q).y() / length(q));
  }

  @Override
  public Travel travel(double to) {
    double weight = -STANDARD_GRAVITY * Math.sin(direction);
    return Travel.sampled(
        0,
        to,
        this::length,
        this::lever,
        q -> weight * masses.nominal(),
        q -> weight * masses.heaviest(),
        q -> weight * masses.lightest(),
        1,
        friction);
  }
}
