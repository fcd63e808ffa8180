package org.staywright.fit.replace;

import org.jspecify.annotations.Nullable;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * Something in which a part is not like the old spring.
 *
 * @param what it is
 * @param old a number in SI, a {@link Coded} value or a text
 * @param now the same of the part
 * @param effect of the change
 * @param figure that the effect's sentence takes besides, SI; NaN for none
 */
public record Difference(What what, Object old, Object now, Effect effect, double figure) {

  /** What can differ, and the unit of both values; null for words. */
  public enum What implements Coded {
    FAMILY(null),
    ROD_DIAMETER(Unit.MILLIMETRE),
    TUBE_DIAMETER(Unit.MILLIMETRE),
    STROKE(Unit.MILLIMETRE),
    EXTENDED_LENGTH(Unit.MILLIMETRE),
    COMPRESSED_LENGTH(Unit.MILLIMETRE),
    CENTRES_OPEN(Unit.MILLIMETRE),
    CENTRES_CLOSED(Unit.MILLIMETRE),
    FORCE(Unit.NEWTON),
    ROD_END(null),
    TUBE_END(null),
    BALL_DIAMETER(Unit.MILLIMETRE),
    ROD_THREAD(null),
    DAMPING(null),
    FINISH(null);

    private final @Nullable Unit unit;

    What(@Nullable Unit unit) {
      this.unit = unit;
    }

    public @Nullable Unit unit() {
      return unit;
    }
  }

  /** What a difference does. */
  public enum Effect implements Coded {
    OTHER_FAMILY,
    ROD_THICKER,
    ROD_THINNER,
    TUBE_THICKER,
    TUBE_THINNER,
    STROKE_LONGER,
    STROKE_SHORTER,
    OPENS_FARTHER,
    OPENS_LESS,
    LONGER_CLOSED,
    SHORTER_CLOSED,
    DOES_NOT_REACH,
    HAS_NO_ROOM,
    FORCE_MORE,
    FORCE_MORE_AT_HAND,
    FORCE_LESS,
    FORCE_LESS_AT_HAND,
    OTHER_END,
    OTHER_BALL,
    OTHER_THREAD,
    NOT_DAMPED,
    NEWLY_DAMPED,
    OTHER_FINISH
  }

  /** New less old, SI; NaN for words. */
  public double more() {
    return old instanceof Double before && now instanceof Double after
        ? after - before
        : Double.NaN;
  }
}
