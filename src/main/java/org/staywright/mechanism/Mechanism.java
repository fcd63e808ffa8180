package org.staywright.mechanism;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Fault;

/**
 * A load with one degree of freedom q that springs help to move.
 *
 * <p>Sampled once over its travel; from there on only virtual work counts: n·F(L)·dL/dq + Q.
 */
public sealed interface Mechanism permits Rigid, ForceProfile, SeatColumn {

  /** Samples of a travel, both ends included. */
  int SAMPLES = 61;

  /** Whether q turns (rad) or shifts (m). */
  enum Movement {
    TURNS,
    SHIFTS
  }

  Movement movement();

  /** What differs by mechanism, one side each, so that none is forgotten. */
  record Sides<T>(
      Function<HingedFlap, T> flap,
      Function<StraightLift, T> lift,
      Function<ForceProfile, T> profile,
      Function<SeatColumn, T> seat) {}

  /** The side of this one. */
  <T> T side(Sides<T> sides);

  /** What differs between a rigid load, a table and a seat. */
  default <T> T as(
      Function<Rigid, T> rigid, Function<ForceProfile, T> profile, Function<SeatColumn, T> seat) {
    return side(new Sides<>(rigid::apply, rigid::apply, profile, seat));
  }

  /** What differs between a load that a hand moves and a seat. */
  default <T> T handOrSeat(Function<Mechanism, T> hand, Function<SeatColumn, T> seat) {
    return side(new Sides<>(hand::apply, hand::apply, hand::apply, seat));
  }

  /** As a rigid load with its mounts; empty where nobody knows the geometry behind a length. */
  default Optional<Rigid> rigid() {
    return Optional.empty();
  }

  /**
   * Whether a hand moves the load over its travel, with springs hung on end fittings. Else one
   * column carries it, which stands in its cones and is moved by letting go of its lock.
   */
  default boolean handMoves() {
    return true;
  }

  /** The same on a frame tilted otherwise, rad; itself where nothing is said of a tilt. */
  default Mechanism tilted(double angle) {
    return this;
  }

  /** Whether a single spring at one side twists the load. */
  default boolean twistsOnOne() {
    return false;
  }

  /** What it is called where names are exchanged: the type of a load. */
  String code();

  /** Smallest q of the travel, rad or m. */
  default double start() {
    return 0;
  }

  /** Largest q of the travel, rad or m. */
  double end();

  /**
   * What makes the mechanism impossible to compute, with the fields it is about; empty if sound.
   */
  List<Fault> faults();

  /** Spring length at q, m. */
  double length(double q);

  /** The travel from its start to an end that need not be the mechanism's own. */
  Travel travel(double end);

  /**
   * What must be set going: kg·m² where it turns, kg where it shifts, of the nominal mass; empty
   * where it is not known.
   */
  default OptionalDouble inertia() {
    return OptionalDouble.empty();
  }

  /**
   * What moves at the nominal, the heaviest and the lightest mass, over that at the nominal one.
   */
  default Masses shares() {
    return new Masses(1, 1, 1);
  }

  /** How far the mounts stand apart across the side view, m. */
  double lateralOffset();

  /** Which mount is to carry the rod. */
  RodEnd rodEnd();

  /**
   * Direction from the frame mount to the moving mount against the vertical, +1 straight up; empty
   * where it is not known.
   */
  OptionalDouble rise(double q);
}
