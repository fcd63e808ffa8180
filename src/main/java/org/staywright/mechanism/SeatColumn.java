package org.staywright.mechanism;

import static org.staywright.unit.Unit.STANDARD_GRAVITY;

import java.util.List;
import java.util.OptionalDouble;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.unit.Fault;

/**
 * A seat on one upright column; q is its height above the lowest position, m. The column is let out
 * to a stop of its own where the seat is highest, so that its length counts from there: L(q) = q,
 * fully extended at the end of the travel.
 *
 * <p>Statics: the column alone carries the seat and the sitter's share, both upright.
 *
 * @param seatMass of all that the column lifts when nobody sits, kg
 * @param lightest sitter, kg
 * @param heaviest sitter, kg
 * @param share of the sitter's weight that the seat carries, the feet the rest
 * @param end how far the height can be set, m
 */
public record SeatColumn(
    double seatMass, double lightest, double heaviest, double share, double end)
    implements Mechanism {

  public static final String CODE = "seat-column";

  /** Weight on the column when nobody sits, N. */
  public double empty() {
    return seatMass * STANDARD_GRAVITY;
  }

  /** Weight on the column under the lightest sitter, N. */
  public double light() {
    return empty() + share * lightest * STANDARD_GRAVITY;
  }

  /** Weight on the column under the heaviest sitter, N. */
  public double heavy() {
    return empty() + share * heaviest * STANDARD_GRAVITY;
  }

  /** The same with more or less height to be set, m. */
  public SeatColumn to(double travel) {
    return new SeatColumn(seatMass, lightest, heaviest, share, travel);
  }

  @Override
  public <T> T side(Sides<T> sides) {
    return sides.seat().apply(this);
  }

  /** Whoever sits down lowers it: no hand is asked for anything. */
  @Override
  public boolean handMoves() {
    return false;
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
    return List.of();
  }

  @Override
  public double length(double q) {
    return q;
  }

  /** Of the empty seat. */
  @Override
  public OptionalDouble inertia() {
    return OptionalDouble.of(seatMass);
  }

  @Override
  public double lateralOffset() {
    return 0;
  }

  @Override
  public RodEnd rodEnd() {
    return RodEnd.FRAME;
  }

  @Override
  public OptionalDouble rise(double q) {
    return OptionalDouble.of(1);
  }

  /** Of the empty seat, under the heaviest and under the lightest sitter. */
  @Override
  public Masses shares() {
    return new Masses(1, heavy() / empty(), light() / empty());
  }

  /**
   * Of the empty seat; its heavier load has the heaviest sitter on it, its lighter the lightest.
   */
  @Override
  public Travel travel(double to) {
    return Travel.sampled(
        0, to, this::length, q -> 1, q -> -empty(), q -> -heavy(), q -> -light(), 1, 0);
  }
}
