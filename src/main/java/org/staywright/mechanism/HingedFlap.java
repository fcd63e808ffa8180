package org.staywright.mechanism;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Fault;

/**
 * A flap on a hinge at the origin, drawn closed; q is the angle it has opened, rad.
 *
 * <p>Statics by virtual work (any text on engineering mechanics, e.g. J. L. Meriam and L. G.
 * Kraige, Statics, ch. 7).
 *
 * @param masses nominal, heaviest and lightest
 * @param centreOfMass closed, m
 * @param handle closed, m
 * @param sense +1 opens counterclockwise, −1 clockwise
 * @param end opening angle, rad
 * @param tilt of the frame, counterclockwise, rad
 * @param friction of the hinge, N·m
 * @param mounts of the spring
 * @param ownInertia about the hinge, kg·m²; null for that of a plate with its centre of mass in its
 *     middle
 * @param seal what acts near the closed position besides gravity
 */
public record HingedFlap(
    Masses masses,
    Point centreOfMass,
    Point handle,
    int sense,
    double end,
    double tilt,
    double friction,
    Mounts mounts,
    @Nullable Double ownInertia,
    Seal seal)
    implements Rigid {

  public static final String CODE = "hinged-flap";

  /** A spring or its lever shorter than this cannot be told from none, m. */
  private static final double LEAST = 1e-3;

  /** A flap whose inertia nobody gave. */
  public HingedFlap(
      Masses masses,
      Point centreOfMass,
      Point handle,
      int sense,
      double end,
      double tilt,
      double friction,
      Mounts mounts) {
    this(masses, centreOfMass, handle, sense, end, tilt, friction, mounts, null, Seal.NONE);
  }

  @Override
  public <T> T side(Sides<T> sides) {
    return sides.flap().apply(this);
  }

  @Override
  public Movement movement() {
    return Movement.TURNS;
  }

  @Override
  public String code() {
    return CODE;
  }

  @Override
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    if (handle.distance() < LEAST) {
      faults.add(new Fault("handle", handle, "≥ 1 mm", "handle-at-hinge"));
    }
    if (mounts.frame().distance() < LEAST) {
      faults.add(new Fault("frame", mounts.frame(), "≥ 1 mm", "mount-at-hinge"));
    }
    if (mounts.moving().distance() < LEAST) {
      faults.add(new Fault("moving", mounts.moving(), "≥ 1 mm", "mount-at-hinge"));
    }
    if (!faults.isEmpty()) {
      return faults;
    }
    if (length(0) < LEAST) {
      faults.add(new Fault("moving", mounts.moving(), "≥ 1 mm", "mounts-coincide"));
    } else if (length(nearest()) < LEAST) {
      faults.add(new Fault("moving", mounts.moving(), "≥ 1 mm", "mounts-pass-through"));
    }
    return faults;
  }

  /** The opening angle in the travel at which the mounts are nearest to each other. */
  private double nearest() {
    double ahead = sense * (angle(mounts.frame()) - angle(mounts.moving()));
    double meeting = ahead - 2 * Math.PI * Math.floor(ahead / (2 * Math.PI));
    if (meeting <= end) {
      return meeting;
    }
    return length(end) < length(0) ? end : 0;
  }

  private static double angle(Point point) {
    return Math.atan2(point.y(), point.x());
  }

  @Override
  public double length(double q) {
    Point apart = mounts.moving().turned(sense * q).minus(mounts.frame());
    return Math.hypot(apart.distance(), mounts.lateralOffset());
  }

  @Override
  public Pose pose(double q) {
    return new Pose(Math.cos(sense * q), Math.sin(sense * q), 0, 0, sense, 0, 0);
  }

  @Override
  public Point up() {
    return new Point(Math.sin(tilt), Math.cos(tilt));
  }

  /** Of a plate on its edge: (4/3)·m·|C|². */
  @Override
  public OptionalDouble inertia() {
    double plate = 4.0 / 3 * masses.nominal() * Math.pow(centreOfMass.distance(), 2);
    return OptionalDouble.of(ownInertia == null ? plate : ownInertia);
  }

  @Override
  public HingedFlap at(Mounts elsewhere) {
    return new HingedFlap(
        masses, centreOfMass, handle, sense, end, tilt, friction, elsewhere, ownInertia, seal);
  }

  /** The same opened farther or less far, rad. */
  @Override
  public HingedFlap to(double angle) {
    return new HingedFlap(
        masses, centreOfMass, handle, sense, angle, tilt, friction, mounts, ownInertia, seal);
  }

  @Override
  public HingedFlap tilted(double angle) {
    return new HingedFlap(
        masses, centreOfMass, handle, sense, end, angle, friction, mounts, ownInertia, seal);
  }

  /** The hinge alone keeps it square. */
  @Override
  public boolean twistsOnOne() {
    return true;
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
    Point apart = mounts.moving().turned(sense * q).minus(mounts.frame());
    return OptionalDouble.of((apart.x() * Math.sin(tilt) + apart.y() * Math.cos(tilt)) / length(q));
  }

  /** dL/dθ = (P − A)·(dP/dθ) / L with dP/dθ = σ(−P_y, P_x), so the P·P part drops out. */
  @Override
  public double lever(double q) {
    Point frame = mounts.frame();
    Point moving = mounts.moving().turned(sense * q);
    return sense * (frame.x() * moving.y() - frame.y() * moving.x()) / length(q);
  }

  @Override
  public double besides(double q) {
    return seal.opening(q);
  }

  @Override
  public Travel travel(double to) {
    return Travel.sampled(
        0,
        to,
        this::length,
        this::lever,
        q -> gravityPerMass(q) * masses.nominal() + seal.opening(q),
        q -> gravityPerMass(q) * masses.heaviest() + seal.opening(q),
        q -> gravityPerMass(q) * masses.lightest() + seal.opening(q),
        handle.distance(),
        friction);
  }

  /** Moment of gravity in the opening direction: Q/m = −σ·g·(x_c cos t − y_c sin t). */
  private double gravityPerMass(double q) {
    Point centre = centreOfMass.turned(sense * q);
    return -sense * STANDARD_GRAVITY * (centre.x() * Math.cos(tilt) - centre.y() * Math.sin(tilt));
  }
}
