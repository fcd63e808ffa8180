package org.staywright.fit;

import org.staywright.mechanism.Mechanism;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * A requirement that a near part misses. SI.
 *
 * @param code of the requirement
 * @param needed by the job
 * @param has of the part, NaN where it never does
 */
public record Blocker(Code code, double needed, double has) {

  /** The requirements that can be missed by a little. */
  public enum Code implements Coded {
    HAND_FORCE(Unit.NEWTON),
    /** Where opening and closing have limits of their own. */
    HAND_OPEN(Unit.NEWTON),
    HAND_CLOSE(Unit.NEWTON),
    HOLD_RATIO(null),
    COMPRESSED_RESERVE(Unit.MILLIMETRE),
    EXTENDED_RESERVE(Unit.MILLIMETRE),
    /** Extended length that would stop the flap at its opening angle. */
    SPRING_STOP(Unit.MILLIMETRE),
    /** Stroke of a column against the height that can be set. */
    HEIGHT_TRAVEL(Unit.MILLIMETRE),
    RISES_EMPTY(null),
    SINKS_UNDER_LIGHTEST(null),
    STAYS_SHUT(Unit.NEWTON_METRE, Unit.NEWTON),
    RISES(Unit.DEGREE, Unit.MILLIMETRE),
    /** Least force at the hand that moves it, below zero where it moves by itself. */
    STAYS_PUT(Unit.NEWTON),
    LATCH_PUSH(Unit.NEWTON),
    OVER_CENTRE(Unit.DEGREE, Unit.MILLIMETRE),
    /** In time; asked after only where nothing else is missed. */
    STOP_SPEED(Unit.MILLIMETRE_PER_SECOND),
    STOP_ENERGY(Unit.JOULE),
    OPENING_TIME(Unit.SECOND);

    private final Unit turning;
    private final Unit shifting;

    Code(Unit unit) {
      this(unit, unit);
    }

    Code(Unit turning, Unit shifting) {
      this.turning = turning;
      this.shifting = shifting;
    }

    /** Unit at the boundary for a travel that turns or shifts, null for a plain ratio. */
    public Unit unit(Mechanism.Kind kind) {
      return kind == Mechanism.Kind.TURNS ? turning : shifting;
    }
  }
}
