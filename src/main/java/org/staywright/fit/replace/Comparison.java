package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.fit.replace.Difference.Effect;
import org.staywright.fit.replace.Difference.What;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Part.Ends;

/**
 * A part beside what was measured: what differs by more than the reading leaves open, and what that
 * makes of the swap.
 */
final class Comparison {

  /** Travel that changes by less passes for the same: play of joints, common practice, m. */
  private static final double SAME = 2e-3;

  /** Beyond this many half-widths a reading and a part are not the same: three sigma. */
  private static final double BEYOND = 1.5;

  /** Balls and words of the range are exact to this, m or N. */
  private static final double EXACT = 5e-5;

  private final Measurements old;
  private final Part part;
  private final @Nullable Fitting rod;
  private final @Nullable Fitting tube;
  private final double reach;
  private final List<Difference> found = new ArrayList<>();
  private boolean travel;
  private boolean fittings;

  private Comparison(Measurements old, Part part, @Nullable Fitting rod, @Nullable Fitting tube) {
    this.old = old;
    this.part = part;
    this.rod = rod;
    this.tube = tube;
    this.reach = rod == null || tube == null ? 0 : rod.lengthToCentre() + tube.lengthToCentre();
  }

  /** A part with the fittings chosen for it; null for none. */
  static Comparison of(Measurements old, Part part, @Nullable Fitting rod, @Nullable Fitting tube) {
    Comparison comparison = new Comparison(old, part, rod, tube);
    comparison.family();
    comparison.thicknesses();
    comparison.lengths();
    comparison.places();
    comparison.force();
    comparison.ends();
    comparison.words();
    return comparison;
  }

  List<Difference> differences() {
    return found;
  }

  Replacement.Interchange kind() {
    if (travel) {
      return Replacement.Interchange.CHANGED_TRAVEL;
    }
    return fittings ? Replacement.Interchange.OTHER_FITTINGS : Replacement.Interchange.DROP_IN;
  }

  private void family() {
    if (old.family() != null && old.family() != part.family()) {
      word(What.FAMILY, old.family(), part.family(), Effect.OTHER_FAMILY);
      travel = true;
    }
  }

  private void thicknesses() {
    size(
        What.ROD_DIAMETER,
        old.size(Gauge.ROD_DIAMETER),
        part.spring().rodDiameter(),
        Effect.ROD_THICKER,
        Effect.ROD_THINNER);
    size(
        What.TUBE_DIAMETER,
        old.size(Gauge.TUBE_DIAMETER),
        part.spring().tubeDiameter(),
        Effect.TUBE_THICKER,
        Effect.TUBE_THINNER);
  }

  private void lengths() {
    double stroke = part.spring().stroke();
    double extended = part.spring().extendedLength();
    double compressed = part.spring().compressedLength();
    Gauge strokeBy = first(Gauge.STROKE, Gauge.EXPOSED_ROD);
    travel(What.STROKE, strokeBy, stroke, Effect.STROKE_LONGER, Effect.STROKE_SHORTER);
    Gauge extendedBy = first(Gauge.EXTENDED_CENTRES, Gauge.EXTENDED_LENGTH);
    travel(
        What.EXTENDED_LENGTH,
        extendedBy,
        extended + (extendedBy == Gauge.EXTENDED_CENTRES ? reach : 0),
        Effect.OPENS_FARTHER,
        Effect.OPENS_LESS);
    Gauge compressedBy =
        first(Gauge.COMPRESSED_CENTRES, Gauge.COMPRESSED_LENGTH, Gauge.TUBE_LENGTH);
    travel(
        What.COMPRESSED_LENGTH,
        compressedBy,
        compressed + (compressedBy == Gauge.COMPRESSED_CENTRES ? reach : 0),
        Effect.LONGER_CLOSED,
        Effect.SHORTER_CLOSED);
  }

  private @Nullable Gauge first(Gauge... gauges) {
    for (Gauge gauge : gauges) {
      if (old.size(gauge) != null) {
        return gauge;
      }
    }
    return null;
  }

  private void travel(What what, @Nullable Gauge gauge, double now, Effect longer, Effect shorter) {
    Reading reading = gauge == null ? null : old.size(gauge);
    if (reading == null) {
      return;
    }
    size(what, reading, now, longer, shorter);
    travel |= Math.abs(now - reading.value()) > Math.max(SAME, BEYOND * reading.plusMinus());
  }

  /** Between the mounts as they stand: the spring must neither bottom nor be pulled out. */
  private void places() {
    Reading closed = old.size(Gauge.CENTRES_CLOSED);
    double compressed = part.spring().compressedLength() + reach;
    if (closed != null && compressed > closed.value() + closed.plusMinus()) {
      add(What.CENTRES_CLOSED, closed.value(), compressed, Effect.HAS_NO_ROOM, Double.NaN);
      travel = true;
    }
    Reading open = old.size(Gauge.CENTRES_OPEN);
    double extended = part.spring().extendedLength() + reach;
    if (open != null && extended < open.value() - open.plusMinus()) {
      add(What.CENTRES_OPEN, open.value(), extended, Effect.DOES_NOT_REACH, Double.NaN);
      travel = true;
    }
  }

  private void size(What what, @Nullable Reading reading, double now, Effect more, Effect less) {
    if (reading != null && Math.abs(now - reading.value()) > reading.plusMinus()) {
      add(what, reading.value(), now, now > reading.value() ? more : less, Double.NaN);
    }
  }

  /** At the hand by the work of the whole travel: n·ΔF over the spring's way, by the handle's. */
  private void force() {
    Double before = forceBefore();
    double now = part.spring().force();
    if (before == null || Math.abs(now - before) < 0.5) {
      return;
    }
    boolean more = now > before;
    Double way = old.travel();
    if (old.handleTravel() == null || way == null) {
      double together = old.springCount() * Math.abs(now - before);
      add(What.FORCE, before, now, more ? Effect.FORCE_MORE : Effect.FORCE_LESS, together);
      return;
    }
    double hand = old.springCount() * Math.abs(now - before) * way / old.handleTravel();
    Effect effect = more ? Effect.FORCE_MORE_AT_HAND : Effect.FORCE_LESS_AT_HAND;
    add(What.FORCE, before, now, effect, hand);
  }

  /** As printed; else what the flap asks, where the part lies beyond what that leaves open. */
  private @Nullable Double forceBefore() {
    Reading flap = old.size(Gauge.FLAP_FORCE);
    if (old.printedForce() != null || flap == null) {
      return old.printedForce();
    }
    double off = Math.abs(part.spring().force() - flap.value());
    return off > flap.plusMinus() ? Double.valueOf(flap.value()) : null;
  }

  private void ends() {
    Ends threads = part.ends();
    if (old.rodThread() != null && !old.rodThread().equals(threads.rod())) {
      word(What.ROD_THREAD, old.rodThread(), threads.rod(), Effect.OTHER_THREAD);
      fittings = true;
    }
    end(What.ROD_END, old.rodEnd(), rod);
    end(What.TUBE_END, old.tubeEnd(), tube);
    Reading ball = old.ball();
    if (ball != null && rod != null && tube != null) {
      double nearest = nearest(ball.value(), rod.ballDiameter(), tube.ballDiameter());
      if (Math.abs(nearest - ball.value()) > ball.plusMinus() + EXACT) {
        add(What.BALL_DIAMETER, ball.value(), nearest, Effect.OTHER_BALL, Double.NaN);
        fittings = true;
      }
    }
  }

  private static double nearest(double ball, double one, double other) {
    return Math.abs(one - ball) <= Math.abs(other - ball) ? one : other;
  }

  private void end(What what, @Nullable FittingWish wish, @Nullable Fitting fitting) {
    if (wish == null) {
      return;
    }
    boolean same =
        fitting != null
            && (wish.number() == null
                ? fitting.type() == wish.type()
                : fitting.number().equals(wish.number()));
    Object before = wish.number() == null ? wish.type() : wish.number();
    if (!same && before != null) {
      Object after =
          fitting == null ? "–" : wish.number() == null ? fitting.type() : fitting.number();
      word(what, before, after, Effect.OTHER_END);
      fittings = true;
    }
  }

  private void words() {
    boolean damped = part.endZone() > 0;
    if (old.endDamped() != null && old.endDamped() != damped) {
      word(
          What.DAMPING,
          Damped.of(old.endDamped()),
          Damped.of(damped),
          damped ? Effect.NEWLY_DAMPED : Effect.NOT_DAMPED);
    }
    if (old.finish() != null && old.finish() != part.finish()) {
      word(What.FINISH, old.finish(), part.finish(), Effect.OTHER_FINISH);
    }
  }

  private void word(What what, Object before, Object after, Effect effect) {
    add(what, before, after, effect, Double.NaN);
  }

  private void add(What what, Object before, Object after, Effect effect, double figure) {
    found.add(new Difference(what, before, after, effect, figure));
  }
}
