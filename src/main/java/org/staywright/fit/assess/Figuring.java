package org.staywright.fit.assess;

import java.util.function.Function;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Extreme;
import org.staywright.fit.job.Figures;
import org.staywright.fit.job.Figures.Hand;
import org.staywright.fit.job.Figures.Hanging;
import org.staywright.fit.job.Figures.Hold;
import org.staywright.fit.job.Figures.Lengths;
import org.staywright.fit.job.Figures.OneFailed;
import org.staywright.fit.job.Figures.Strength;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Job.OpenStop;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.job.Still;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Travel;
import org.staywright.spring.ForceLaw;

/** Works out the figures of one part on one travel. */
public final class Figuring {

  /** Places past the stop at which it is tried whether a spring hangs free. */
  private static final int LIFTS = 150;

  private Figuring() {}

  /** The springs of a job in each state. */
  public record States(Forces nominal, Forces weak, Forces strong) {

    public static States of(Function<SpringState, Forces> forces) {
      return new States(
          forces.apply(SpringState.NOMINAL),
          forces.apply(SpringState.WEAK),
          forces.apply(SpringState.STRONG));
    }

    public Forces of(SpringState state) {
      return switch (state) {
        case NOMINAL -> nominal;
        case WEAK -> weak;
        case STRONG -> strong;
      };
    }
  }

  /** All but the strength. */
  public static Figures slow(Job job, Path path, Hung hung) {
    return of(job, path, hung, null);
  }

  /**
   * @param peak null where strength is not asked for
   */
  public static Figures of(Job job, Path path, Hung hung, Peak peak) {
    Travel travel = path.travel();
    States states = States.of(state -> Forces.of(job, path, hung, state));
    return new Figures(
        lengths(travel, hung),
        hand(job, travel, states),
        hold(travel, states, hung.part().spring().sense()),
        EndSpeed.landing(job, path, hung),
        strength(job, travel, states, hung, peak),
        oneFailed(job, travel, states, hung),
        hanging(job, travel, hung));
  }

  static Lengths lengths(Travel travel, Hung hung) {
    int end = travel.last();
    return new Lengths(
        travel.q()[0],
        travel.q()[end],
        travel.length()[0],
        travel.length()[end],
        travel.shortest(),
        travel.longest(),
        hung.compressed(),
        hung.extended());
  }

  public static Hand hand(Job job, Travel travel, States states) {
    int n = travel.q().length;
    double[] open = new double[n];
    double[] close = new double[n];
    double[] worst = new double[n];
    double squares = 0;
    for (int i = 0; i < n; i++) {
      open[i] = states.nominal.open(travel, travel.load(), i);
      close[i] = states.nominal.close(travel, travel.load(), i);
      worst[i] = Double.NEGATIVE_INFINITY;
      squares += open[i] * open[i] + close[i] * close[i];
    }
    Extreme mostOpen = null;
    Extreme mostClose = null;
    for (Corner corner : Corner.ALL) {
      Forces forces = states.of(corner.spring());
      double[] load = corner.load().of(travel);
      for (int i = 0; i < n; i++) {
        double opening = forces.open(travel, load, i);
        double closing = forces.close(travel, load, i);
        worst[i] = Math.max(worst[i], opening);
        mostOpen = greater(mostOpen, opening, travel.q()[i], corner);
        mostClose = greater(mostClose, closing, travel.q()[i], corner);
      }
    }
    return new Hand(
        greatest(open),
        greatest(close),
        Math.sqrt(squares / (2 * n)),
        mostOpen,
        mostClose,
        lastRun(travel, open, -1),
        lastRun(travel, worst, -1),
        lastRun(travel, close, 1),
        staysPut(job.requirements().still(), travel, open, close));
  }

  private static Extreme greater(Extreme most, double value, double q, Corner corner) {
    return most == null || value > most.value() ? new Extreme(value, q, corner) : most;
  }

  /** Friction less imbalance at the worst place of the stretch; null where none is asked. */
  private static Double staysPut(Still asked, Travel travel, double[] open, double[] close) {
    if (asked == null) {
      return null;
    }
    TravelSection stretch = TravelSection.of(travel, asked.from(), asked.to());
    double least = Double.POSITIVE_INFINITY;
    for (int i = stretch.first(); i <= stretch.last(); i++) {
      least = Math.min(least, Math.min(open[i], close[i]));
    }
    return least;
  }

  /**
   * @param sense of the springs, +1 where they push
   */
  public static Hold hold(Travel travel, States states, int sense) {
    int last = travel.last();
    return Holding.of(
        travel,
        new Holding.Ends(states.weak.moment()[0], states.weak.moment()[last]),
        new Holding.Ends(states.strong.moment()[0], states.strong.moment()[last]),
        states.nominal.moment()[0],
        overCentre(travel, sense));
  }

  /**
   * The first q where the spring opens, if it presses shut at the start; else null.
   *
   * @param sense of the spring, +1 where it pushes
   */
  public static Double overCentre(Travel travel, int sense) {
    int i = 0;
    while (i <= travel.last() && sense * travel.lever()[i] <= 0) {
      i++;
    }
    return i == 0 || i > travel.last() || travel.lever()[0] == 0 ? null : travel.q()[i];
  }

  private static Strength strength(Job job, Travel travel, States states, Hung hung, Peak peak) {
    return new Strength(
        peak == null ? Double.NaN : peak.pressure(),
        peak == null ? Double.NaN : peak.load(),
        stopLoad(
            job,
            travel,
            hung.count(),
            states.weak.moment()[travel.last()],
            states.strong.moment()[travel.last()]),
        peak == null ? Double.NaN : peak.bucklingFactor(travel, hung.tubeFitting()),
        swing(job, travel.shortest()));
  }

  /** Angle out of the side view that the end fittings give way to, rad. */
  public static double swing(Job job, double shortest) {
    return Math.asin(Math.min(1, job.mechanism().lateralOffset() / shortest));
  }

  /**
   * With the spring as the stop, the pull on each mount at rest, in the worst corner: (S + Q −
   * M_f)/(n·|L′|).
   *
   * @param weak S of the weak springs at the end
   * @param strong S of the strong springs at the end
   */
  public static double stopLoad(Job job, Travel travel, int count, double weak, double strong) {
    int last = travel.last();
    double lever = Math.abs(travel.lever()[last]);
    if (job.requirements().openStop() != OpenStop.SPRING_STOP || lever == 0) {
      return 0;
    }
    double opening = Math.max(weak, strong) + Math.max(travel.heavy()[last], travel.light()[last]);
    return Math.max(0, (opening - travel.friction()) / (count * lever));
  }

  /** With none left it is the bare load and whatever acts along. */
  private static OneFailed oneFailed(Job job, Travel travel, States states, Hung hung) {
    States fewer =
        States.of(
            state -> {
              double rub = hung.part().spring().friction(state.kelvin(job.conditions()));
              return states.of(state).without(travel, rub);
            });
    return new OneFailed(hold(travel, fewer, 1).open().value(), hand(job, travel, fewer).worst());
  }

  private static Hanging hanging(Job job, Travel travel, Hung hung) {
    double open = travel.length()[travel.last()];
    boolean pushes = hung.part().spring().sense() > 0;
    double free = pushes ? hung.extended() : hung.compressed();
    // At its stop a spring that is the stop is as long as it gets.
    boolean hangs = pushes ? open >= free - 1e-9 : open <= free + 1e-9;
    if (hangs) {
      return new Hanging(0, 0.0);
    }
    double kelvin = SpringState.STRONG.kelvin(job.conditions());
    ForceLaw strong = SpringState.STRONG.law(hung.part(), job.conditions());
    double press = strong.taking(hung.extended() - open, kelvin);
    return new Hanging(Math.max(0, press), lift(job.mechanism(), travel, free, pushes));
  }

  /** How far past the end of the travel a free spring spans the mounts; null for nowhere near. */
  private static Double lift(Mechanism mechanism, Travel travel, double free, boolean pushes) {
    double most = Hanging.sought(mechanism.movement() == Mechanism.Movement.TURNS);
    for (int i = 1; i <= LIFTS; i++) {
      double past = most * i / LIFTS;
      double length = mechanism.length(travel.q()[travel.last()] + past);
      if (pushes ? length >= free : length <= free) {
        return past;
      }
    }
    return null;
  }

  private static double greatest(double[] values) {
    double most = values[0];
    for (double value : values) {
      most = Math.max(most, value);
    }
    return most;
  }

  /**
   * The first q from which the values keep a sign all the way to the end, null if the end has not.
   */
  private static Double lastRun(Travel travel, double[] values, int sign) {
    int from = values.length;
    while (from > 0 && sign * values[from - 1] > 0) {
      from--;
    }
    return from == values.length ? null : travel.q()[from];
  }
}
