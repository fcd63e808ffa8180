package org.staywright.fit.assess;

import static org.staywright.fit.assess.Figure.Better.BALANCED;
import static org.staywright.fit.assess.Figure.Better.LESS;
import static org.staywright.fit.assess.Figure.Better.MORE;
import static org.staywright.fit.assess.Figure.Better.NEITHER;
import static org.staywright.fit.assess.Figure.Measured.AS_NUMBER;
import static org.staywright.fit.assess.Figure.Measured.IN_BARS;
import static org.staywright.fit.assess.Figure.Measured.IN_DEGREES;
import static org.staywright.fit.assess.Figure.Measured.IN_MILLIMETRES;
import static org.staywright.fit.assess.Figure.Measured.IN_MILLIMETRES_PER_SECOND;
import static org.staywright.fit.assess.Figure.Measured.IN_MOMENT;
import static org.staywright.fit.assess.Figure.Measured.IN_NEWTONS;
import static org.staywright.fit.assess.Figure.Measured.ON_THE_WAY;
import static org.staywright.fit.assess.Figure.Subject.FEEL;
import static org.staywright.fit.assess.Figure.Subject.LENGTHS;
import static org.staywright.fit.assess.Figure.Subject.STRENGTH;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.SeatFigures;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.SeatColumn;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * What is told of a fit: one row each, in the order of a reader's questions, read by whoever shows,
 * compares, prints, writes or describes figures. Null where it never comes to that.
 */
public enum Figure implements Coded {
  HAND_OPEN_WORST(FEEL, IN_NEWTONS, 0, BALANCED, Source.hand(f -> f.hand().openWorst().value())),
  HAND_CLOSE_WORST(FEEL, IN_NEWTONS, 0, BALANCED, Source.hand(f -> f.hand().closeWorst().value())),
  HAND_OPEN_MAX(FEEL, IN_NEWTONS, 0, BALANCED, Source.hand(f -> f.hand().open())),
  HAND_CLOSE_MAX(FEEL, IN_NEWTONS, 0, BALANCED, Source.hand(f -> f.hand().close())),
  HAND_RMS(FEEL, IN_NEWTONS, 0, LESS, Source.hand(f -> f.hand().rms())),
  HOLD_RATIO_OPEN(FEEL, AS_NUMBER, 2, MORE, Source.hand(f -> Source.value(f.hold().ratio()))),
  HOLD_OPEN(FEEL, IN_NEWTONS, 0, MORE, Source.hand(f -> f.hold().open().value())),
  ONE_FAILED_HOLD(FEEL, IN_NEWTONS, 0, MORE, Source.hand(f -> f.oneFailed().hold())),
  ONE_FAILED_HAND(FEEL, IN_NEWTONS, 0, LESS, Source.hand(f -> f.oneFailed().hand())),
  SELF_OPENS_FROM(FEEL, ON_THE_WAY, 0, NEITHER, Source.hand(f -> f.hand().selfOpensFrom())),
  SELF_OPENS_FROM_WORST(
      FEEL, ON_THE_WAY, 0, NEITHER, Source.hand(f -> f.hand().selfOpensFromWorst())),
  STAYS_FROM(FEEL, ON_THE_WAY, 0, NEITHER, Source.hand(f -> f.hand().staysFrom())),
  STAYS_PUT(FEEL, IN_NEWTONS, 0, MORE, Source.hand(f -> f.hand().staysPut())),
  CLOSED_HOLD(FEEL, IN_MOMENT, 1, NEITHER, Source.hand(f -> f.hold().closed())),
  CLOSED_HOLD_LEAST(FEEL, IN_MOMENT, 1, NEITHER, Source.hand(f -> f.hold().closedLeast().value())),
  LATCH_PUSH(FEEL, IN_NEWTONS, 0, LESS, Source.hand(f -> f.hold().latchPush())),
  OVER_CENTRE(FEEL, ON_THE_WAY, 0, NEITHER, Source.hand(f -> f.hold().overCentre())),
  END_SPEED(FEEL, IN_MILLIMETRES_PER_SECOND, 0, LESS, Source.hand(f -> f.landing().endSpeed())),
  OPENING_ANGLE(LENGTHS, ON_THE_WAY, 1, NEITHER, Source.hand(f -> f.lengths().travelled())),
  LENGTH_CLOSED(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().closed())),
  LENGTH_OPEN(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().open())),
  LENGTH_MIN(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().min())),
  LENGTH_MAX(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().max())),
  COMPRESSED(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().compressed())),
  EXTENDED(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.hand(f -> f.lengths().extended())),
  COMPRESSED_RESERVE(
      LENGTHS, IN_MILLIMETRES, 1, MORE, Source.hand(f -> f.lengths().compressedReserve())),
  EXTENDED_RESERVE(
      LENGTHS, IN_MILLIMETRES, 1, MORE, Source.hand(f -> f.lengths().extendedReserve())),
  PRESS_TO_HANG(LENGTHS, IN_NEWTONS, 0, LESS, Source.hand(f -> f.hanging().press())),
  LIFT_TO_HANG(LENGTHS, ON_THE_WAY, 0, LESS, Source.hand(f -> f.hanging().lift())),
  PEAK_MOUNT_LOAD(STRENGTH, IN_NEWTONS, 0, LESS, Source.hand(f -> f.strength().peakMountLoad())),
  STOP_LOAD(STRENGTH, IN_NEWTONS, 0, LESS, Source.hand(f -> f.strength().stopLoad())),
  SWING(STRENGTH, IN_DEGREES, 1, NEITHER, Source.hand(f -> f.strength().swing())),
  RISES_EMPTY_RATIO(FEEL, AS_NUMBER, 2, MORE, Source.seat(SeatFigures::risesEmpty)),
  SINKS_UNDER_LIGHTEST_RATIO(
      FEEL, AS_NUMBER, 2, MORE, Source.seat(SeatFigures::sinksUnderLightest)),
  BOUNCE_LOW(FEEL, IN_MILLIMETRES, 1, LESS, Source.seat(seat -> seat.bounce().low())),
  BOUNCE_MIDDLE(FEEL, IN_MILLIMETRES, 1, LESS, Source.seat(seat -> seat.bounce().middle())),
  BOUNCE_HIGH(FEEL, IN_MILLIMETRES, 1, LESS, Source.seat(seat -> seat.bounce().high())),
  LOWERING_RMS(FEEL, IN_NEWTONS, 0, LESS, Source.seat(SeatFigures::lowering)),
  HEIGHT_TRAVEL(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.seat(SeatFigures::travel)),
  STROKE(LENGTHS, IN_MILLIMETRES, 1, NEITHER, Source.seat(SeatFigures::stroke)),
  THRUST_LOAD(STRENGTH, IN_NEWTONS, 0, NEITHER, Source.seat(seat -> seat.strength().thrust())),
  LOCK_LOAD(STRENGTH, IN_NEWTONS, 0, NEITHER, Source.seat(seat -> seat.strength().lockLoad())),
  CONSTANCY(FEEL, AS_NUMBER, 2, MORE, Source.any(Fit::constancy)),
  PEAK_PRESSURE(STRENGTH, IN_BARS, 0, LESS, Source.any(fit -> fit.outcome().peakPressure())),
  BUCKLING_FACTOR(STRENGTH, AS_NUMBER, 1, MORE, Source.any(fit -> fit.outcome().bucklingFactor()));

  /** Which way a reader would have it. */
  public enum Better {
    LESS,
    MORE,
    /** The nearer to nothing: below zero it moves by itself. */
    BALANCED,
    NEITHER
  }

  /** What a figure is about. */
  public enum Subject {
    FEEL,
    LENGTHS,
    STRENGTH
  }

  /** What a figure is measured in. */
  public enum Measured {
    IN_NEWTONS(Unit.NEWTON, Unit.NEWTON, "N"),
    IN_MILLIMETRES(Unit.MILLIMETRE, Unit.MILLIMETRE, "Mm"),
    IN_MILLIMETRES_PER_SECOND(Unit.MILLIMETRE_PER_SECOND, Unit.MILLIMETRE_PER_SECOND, "MmPerS"),
    IN_BARS(Unit.BAR, Unit.BAR, "Bar"),
    IN_DEGREES(Unit.DEGREE, Unit.DEGREE, "Deg"),
    AS_NUMBER(null, null, ""),
    /** A place on the way. */
    ON_THE_WAY(Unit.DEGREE, Unit.MILLIMETRE, "Deg", "Mm"),
    IN_MOMENT(Unit.NEWTON_METRE, Unit.NEWTON, "Nm", "N");

    private final Unit turning;
    private final Unit shifting;
    private final List<String> suffixes;

    Measured(Unit turning, Unit shifting, String... suffixes) {
      this.turning = turning;
      this.shifting = shifting;
      this.suffixes = List.of(suffixes);
    }
  }

  private static final Set<Figure> SELDOM =
      EnumSet.of(STAYS_PUT, LATCH_PUSH, OVER_CENTRE, STOP_LOAD, PRESS_TO_HANG, LIFT_TO_HANG);

  private static final Pattern HYPHEN = Pattern.compile("-(.)");

  /** How a figure is had from a fit. */
  private record Source(boolean byHand, boolean underSeat, Function<Fit, Double> of) {

    static Source hand(Function<Figures, Double> of) {
      return new Source(true, false, fit -> fit.outcome().as(of, seat -> null));
    }

    static Source seat(Function<SeatFigures, Double> of) {
      return new Source(false, true, fit -> fit.outcome().as(hand -> null, of));
    }

    static Source any(Function<Fit, Double> of) {
      return new Source(true, true, of);
    }

    static Double value(Extreme extreme) {
      return extreme == null ? null : extreme.value();
    }
  }

  private final Subject subject;
  private final Measured measured;
  private final int decimals;
  private final Better better;
  private final Source source;

  Figure(Subject subject, Measured measured, int decimals, Better better, Source source) {
    this.subject = subject;
    this.measured = measured;
    this.decimals = decimals;
    this.better = better;
    this.source = source;
  }

  /** Those that are told of a fit, whether it comes to them or not. */
  public static List<Figure> of(Fit fit) {
    return Arrays.stream(values())
        .filter(
            figure ->
                fit.outcome().as(hand -> figure.source.byHand, seat -> figure.source.underSeat))
        .toList();
  }

  /**
   * Whether it is told of a mechanism at all.
   *
   * @param code of the mechanism
   */
  public boolean concerns(String code) {
    return code.equals(SeatColumn.CODE) ? source.underSeat : source.byHand;
  }

  /** SI; null where it never comes to that. */
  public Double value(Fit fit) {
    return source.of.apply(fit);
  }

  public Subject subject() {
    return subject;
  }

  public Better better() {
    return better;
  }

  public int decimals() {
    return decimals;
  }

  /** Unit at the boundary for a travel that turns or shifts, null for a plain number. */
  public Unit unit(Mechanism.Movement kind) {
    return kind == Mechanism.Movement.TURNS ? measured.turning : measured.shifting;
  }

  /** Whether it is told only where there is any of it. */
  public boolean seldom() {
    return SELDOM.contains(this);
  }

  /** What it is called below zero, where it then stands for something else; else its code. */
  public String codeBelowZero() {
    return switch (this) {
      case HOLD_OPEN -> "leaves-open";
      case ONE_FAILED_HOLD -> "one-failed-leaves";
      case CLOSED_HOLD -> "closed-push";
      case CLOSED_HOLD_LEAST -> "closed-push-most";
      default -> code();
    };
  }

  /** Its name with its unit where a travel turns or shifts; after a dot a member of an object. */
  public String name(Mechanism.Movement kind) {
    boolean shifts = kind == Mechanism.Movement.SHIFTS;
    String suffix = measured.suffixes.get(shifts ? measured.suffixes.size() - 1 : 0);
    return switch (this) {
      case OPENING_ANGLE -> shifts ? "travelMm" : "openingAngleDeg";
      case BOUNCE_LOW -> "bounceMm.low";
      case BOUNCE_MIDDLE -> "bounceMm.middle";
      case BOUNCE_HIGH -> "bounceMm.high";
      default -> camel(code()) + suffix;
    };
  }

  private static String camel(String code) {
    return HYPHEN.matcher(code).replaceAll(match -> match.group(1).toUpperCase(Locale.ROOT));
  }
}
