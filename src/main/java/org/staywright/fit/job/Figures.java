package org.staywright.fit.job;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a part does in a job where a hand moves the load. SI.
 *
 * @param lengths of mounts and springs
 * @param hand what it has to do
 * @param hold what holds the load where it ends
 * @param landing how it meets its open stop
 * @param strength how hard springs and fittings are worked
 * @param oneFailed with one spring fewer
 * @param hanging how the springs are hung on
 */
public record Figures(
    Lengths lengths,
    Hand hand,
    Hold hold,
    Landing landing,
    Strength strength,
    OneFailed oneFailed,
    Hanging hanging)
    implements Outcome {

  /**
   * Mount centre to mount centre and of the springs with their end fittings, m.
   *
   * @param start of the travel, rad or m
   * @param end of the travel, rad or m
   * @param closed at the start of the travel
   * @param open at its end
   * @param min over the travel
   * @param max over the travel
   * @param compressed shortest of spring and fittings
   * @param extended longest of spring and fittings
   */
  public record Lengths(
      double start,
      double end,
      double closed,
      double open,
      double min,
      double max,
      double compressed,
      double extended) {

    /** Where nobody has looked. */
    public static final Lengths UNKNOWN =
        new Lengths(
            Double.NaN,
            Double.NaN,
            Double.NaN,
            Double.NaN,
            Double.NaN,
            Double.NaN,
            Double.NaN,
            Double.NaN);

    /** rad or m. */
    public double travelled() {
      return end - start;
    }

    public double compressedReserve() {
      return min - compressed;
    }

    public double extendedReserve() {
      return extended - max;
    }
  }

  /**
   * Forces of the hand, N; below zero where it moves by itself.
   *
   * @param open largest opening slowly, nominal
   * @param close largest closing slowly, nominal
   * @param rms root mean square of both over the travel, nominal
   * @param openWorst largest opening slowly in any corner
   * @param closeWorst largest closing slowly in any corner
   * @param selfOpensFrom from here it rises by itself, nominal, rad or m; null where it never does
   * @param selfOpensFromWorst the same in every corner
   * @param staysFrom from here it does not fall by itself, nominal, rad or m; null for nowhere
   * @param staysPut least force that moves it where it is to stay put, nominal; null where that is
   *     not asked
   */
  public record Hand(
      double open,
      double close,
      double rms,
      Extreme openWorst,
      Extreme closeWorst,
      @Nullable Double selfOpensFrom,
      @Nullable Double selfOpensFromWorst,
      @Nullable Double staysFrom,
      @Nullable Double staysPut) {

    /** The larger of both in the worst corner. */
    public double worst() {
      return worstEitherWay().value();
    }

    public Extreme worstEitherWay() {
      return openWorst.value() >= closeWorst.value() ? openWorst : closeWorst;
    }
  }

  /**
   * Friction left out.
   *
   * @param ratio least of what opens over what closes at the open end; null where nothing closes in
   *     any corner
   * @param open least force at the handle that keeps it against its open stop, N
   * @param closed moment that keeps it shut, nominal, N·m or N
   * @param closedLeast the same in the worst corner
   * @param latchPush push at the handle while shut in the worst corner, below zero where it holds
   *     itself shut, N
   * @param shuts greatest force at the handle with which it shuts by itself in any corner, below
   *     zero where it does not, N
   * @param overCentre where a spring that presses it shut passes its dead centre, rad or m; null
   *     where none does
   */
  public record Hold(
      @Nullable Extreme ratio,
      Extreme open,
      double closed,
      Extreme closedLeast,
      double latchPush,
      double shuts,
      @Nullable Double overCentre) {}

  /**
   * @param endSpeed of the handle as damping lets it arrive at the open end, greatest of all
   *     corners, m/s; null where nothing damps
   * @param undampedStop whether the spring is the stop and nothing damps it there
   */
  public record Landing(@Nullable Double endSpeed, boolean undampedStop) {

    /** Where nobody has looked. */
    public static final Landing UNKNOWN = new Landing(null, false);
  }

  /**
   * @param peakPressure highest absolute gas pressure, fast and strong, Pa
   * @param peakMountLoad largest load on a mount, each spring, N
   * @param stopLoad pull on a mount at rest where the spring is the stop, in the worst corner, N
   * @param bucklingFactor least buckling load over fast force
   * @param swing angle that the end fittings must give way to, rad
   */
  public record Strength(
      double peakPressure,
      double peakMountLoad,
      double stopLoad,
      double bucklingFactor,
      double swing) {

    /** Where nobody has looked. */
    public static final Strength UNKNOWN =
        new Strength(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
  }

  /**
   * With one spring fewer, in the worst corner; with none left the bare load.
   *
   * @param hold least force at the handle that keeps it against its open stop, N
   * @param hand larger force of the hand either way, N
   */
  public record OneFailed(double hold, double hand) {

    /** Where nobody has looked. */
    public static final OneFailed UNKNOWN = new OneFailed(Double.NaN, Double.NaN);
  }

  /**
   * Hanging one strong spring on, the load at its open stop.
   *
   * @param press force that still presses it onto its mount, N; 0 where it hangs free
   * @param lift how far past the stop it hangs free, rad or m; 0 at the stop, null where nowhere
   *     near
   */
  public record Hanging(double press, @Nullable Double lift) {

    /** Where nobody has looked. */
    public static final Hanging UNKNOWN = new Hanging(Double.NaN, null);

    private static final double SOUGHT_TURNING = Math.toRadians(15);
    private static final double SOUGHT_SHIFTING = 50e-3;

    /** How far past its stop somebody may move a load to hang a spring on: our choice, rad or m. */
    public static double sought(boolean turning) {
      return turning ? SOUGHT_TURNING : SOUGHT_SHIFTING;
    }
  }

  @Override
  public <T> T as(Function<Figures, T> hand, Function<SeatFigures, T> seat) {
    return hand.apply(this);
  }

  @Override
  public double has(Term term, @Nullable Bare bare) {
    return term.hand.of(bare, this);
  }

  @Override
  public double extended() {
    return lengths.extended();
  }

  @Override
  public @Nullable Double endSpeed() {
    return landing.endSpeed();
  }

  @Override
  public double end() {
    return lengths.end();
  }

  @Override
  public double effort() {
    return hand.rms();
  }

  @Override
  public double peakPressure() {
    return strength.peakPressure();
  }

  @Override
  public double bucklingFactor() {
    return strength.bucklingFactor();
  }
}
