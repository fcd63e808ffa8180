package org.staywright.fit.rank;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.TravelSection;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;

/**
 * A block of springs judged side by side on one travel. Each loop runs over the springs and stores
 * one thing, in a method of its own: that is what the compiler turns into vector instructions.
 */
public final class Lanes {

  public static final int WIDTH = 256;

  /** One array per spring property; V = base + area·L. */
  public final double[] area = new double[WIDTH];

  final Gas nominal = new Gas();
  final Gas weak = new Gas();
  final Gas strong = new Gas();

  /** Where it must stay put; null where that is not asked. */
  @Nullable TravelSection still;

  /** Whether it is asked from where on it rises by itself. */
  boolean rising;

  private final double[] density = new double[WIDTH];

  public Gas of(SpringState state) {
    return switch (state) {
      case NOMINAL -> nominal;
      case WEAK -> weak;
      case STRONG -> strong;
    };
  }

  /** What depends on the state of the springs. */
  public static final class Gas {
    public final double[] mass = new double[WIDTH];
    public final double[] base = new double[WIDTH];
    public final double[] friction = new double[WIDTH];
    final double[] force = new double[WIDTH];

    /** Gas force at the first and at the last sample, N. */
    final double[] first = new double[WIDTH];

    final double[] last = new double[WIDTH];
  }

  /** Sums and extremes over the travel for one number of springs, as moments at the mechanism. */
  public static final class Hand {
    final double[] squares = new double[WIDTH];

    /** Largest opening and closing in any corner. */
    public final double[] open = new double[WIDTH];

    public final double[] close = new double[WIDTH];

    /** The last sample at which it does not rise by itself in every corner, −1 for none. */
    final double[] held = new double[WIDTH];

    /** How near to balance it comes at any sample on opening: how sure {@link #held} is. */
    final double[] closeness = new double[WIDTH];

    /** Least friction over imbalance over the stretch where it must stay put, nominal. */
    final double[] still = new double[WIDTH];

    public double rms(int lane, Travel travel) {
      return Math.sqrt(squares[lane] / travel.q().length) / travel.hand();
    }

    private void clear() {
      Arrays.fill(squares, 0);
      Arrays.fill(open, Double.NEGATIVE_INFINITY);
      Arrays.fill(close, Double.NEGATIVE_INFINITY);
      Arrays.fill(held, -1);
      Arrays.fill(closeness, Double.POSITIVE_INFINITY);
      Arrays.fill(still, Double.POSITIVE_INFINITY);
    }
  }

  /**
   * What a sample asks of every spring alike, for one number of springs.
   *
   * @param pull n·L′
   * @param rub n·|L′|
   * @param load of the nominal mass and what acts along, nominal
   * @param friction of the mechanism and what acts along, nominal
   */
  private record Asked(double pull, double rub, double load, double friction) {}

  /**
   * Runs the block over a travel.
   *
   * @param used lanes in use
   * @param counts numbers of springs
   * @param fits coefficients of p/ρ by state
   * @param hands receives the sums, one for each count
   */
  public void run(
      int used, Travel travel, Alongside along, int[] counts, double[][] fits, Hand[] hands) {
    for (Hand hand : hands) {
      hand.clear();
    }
    Extra extra = new Extra(travel, along);
    int last = travel.last();
    for (int i = 0; i <= last; i++) {
      double length = travel.length()[i];
      double lever = travel.lever()[i];
      for (SpringState state : STATES) {
        force(used, of(state), length, fits[state.ordinal()]);
      }
      if (i == 0) {
        System.arraycopy(weak.force, 0, weak.first, 0, used);
        System.arraycopy(strong.force, 0, strong.first, 0, used);
      }
      for (int c = 0; c < counts.length; c++) {
        double pull = counts[c] * lever;
        double rub = counts[c] * Math.abs(lever);
        Hand hand = hands[c];
        Asked asked = new Asked(pull, rub, extra.load[i], extra.friction[i]);
        squares(used, nominal, asked, hand.squares);
        most(used, weak, -pull, rub, extra.openWeak[i], hand.open);
        most(used, strong, -pull, rub, extra.openStrong[i], hand.open);
        most(used, weak, pull, rub, extra.closeWeak[i], hand.close);
        most(used, strong, pull, rub, extra.closeStrong[i], hand.close);
        if (rising) {
          rising(used, pull, rub, extra, i, hand);
        }
        if (still != null && still.holds(i)) {
          still(used, nominal, asked, hand.still);
        }
      }
    }
    System.arraycopy(weak.force, 0, weak.last, 0, used);
    System.arraycopy(strong.force, 0, strong.last, 0, used);
  }

  private static final SpringState[] STATES = SpringState.values();

  /** What is added to the springs at every sample, whatever the spring. */
  private static final class Extra {
    final double[] load;
    final double[] friction;

    /** What the hand overcomes besides the springs in the worse of both loads. */
    final double[] openWeak;

    final double[] openStrong;
    final double[] closeWeak;
    final double[] closeStrong;

    Extra(Travel travel, Alongside along) {
      int n = travel.q().length;
      load = new double[n];
      friction = new double[n];
      openWeak = new double[n];
      openStrong = new double[n];
      closeWeak = new double[n];
      closeStrong = new double[n];
      for (int i = 0; i < n; i++) {
        double least = Math.min(travel.heavy()[i], travel.light()[i]);
        double most = Math.max(travel.heavy()[i], travel.light()[i]);
        load[i] = travel.load()[i] + along.push(SpringState.NOMINAL)[i];
        friction[i] = travel.friction() + along.friction(SpringState.NOMINAL)[i];
        double weak = along.push(SpringState.WEAK)[i];
        double strong = along.push(SpringState.STRONG)[i];
        double rubWeak = travel.friction() + along.friction(SpringState.WEAK)[i];
        double rubStrong = travel.friction() + along.friction(SpringState.STRONG)[i];
        openWeak[i] = rubWeak - weak - least;
        openStrong[i] = rubStrong - strong - least;
        closeWeak[i] = rubWeak + weak + most;
        closeStrong[i] = rubStrong + strong + most;
      }
    }
  }

  private void force(int used, Gas gas, double length, double[] fit) {
    density(used, gas.mass, gas.base, area, length, density);
    force(used, density, area, fit, gas.force);
  }

  private static void density(
      int used, double[] mass, double[] base, double[] area, double length, double[] density) {
    for (int j = 0; j < used; j++) {
      density[j] = mass[j] / (base[j] + area[j] * length);
    }
  }

  private static void force(
      int used, double[] density, double[] area, double[] fit, double[] force) {
    double c0 = fit[0];
    double c1 = fit[1];
    double c2 = fit[2];
    double c3 = fit[3];
    double c4 = fit[4];
    double c5 = fit[5];
    double c6 = fit[6];
    for (int j = 0; j < used; j++) {
      double r = density[j];
      double pressure = ((((((c6 * r + c5) * r + c4) * r + c3) * r + c2) * r + c1) * r + c0) * r;
      force[j] = (pressure - ATMOSPHERE) * area[j];
    }
  }

  /**
   * Mean square of opening and closing: with balance b and friction m both together give b² + m².
   */
  private static void squares(int used, Gas gas, Asked asked, double[] sum) {
    double[] force = gas.force;
    double[] own = gas.friction;
    double pull = asked.pull;
    double load = asked.load;
    double rub = asked.rub;
    double friction = asked.friction;
    for (int j = 0; j < used; j++) {
      double balance = pull * force[j] + load;
      double stick = rub * own[j] + friction;
      sum[j] += balance * balance + stick * stick;
    }
  }

  private static void still(int used, Gas gas, Asked asked, double[] least) {
    double[] force = gas.force;
    double[] own = gas.friction;
    double pull = asked.pull;
    double load = asked.load;
    double rub = asked.rub;
    double friction = asked.friction;
    for (int j = 0; j < used; j++) {
      double held = rub * own[j] + friction - Math.abs(pull * force[j] + load);
      least[j] = Math.min(least[j], held);
    }
  }

  /** One state at a time: a loop over both is too long for the compiler to run lanes abreast. */
  private static void most(
      int used, Gas gas, double pull, double rub, double beside, double[] most) {
    double[] force = gas.force;
    double[] own = gas.friction;
    for (int j = 0; j < used; j++) {
      most[j] = Math.max(most[j], rub * own[j] + pull * force[j] + beside);
    }
  }

  /** Asked so seldom that it need not be quick. */
  private void rising(int used, double pull, double rub, Extra extra, int i, Hand hand) {
    for (int j = 0; j < used; j++) {
      double one = rub * weak.friction[j] - pull * weak.force[j] + extra.openWeak[i];
      double other = rub * strong.friction[j] - pull * strong.force[j] + extra.openStrong[i];
      double most = Math.max(one, other);
      hand.held[j] = most >= 0 ? i : hand.held[j];
      hand.closeness[j] = Math.min(hand.closeness[j], Math.abs(most));
    }
  }
}
