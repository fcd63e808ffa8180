package org.staywright.fit;

import static org.staywright.unit.Unit.ATMOSPHERE;

import java.util.Arrays;
import org.staywright.mechanism.Travel;

/**
 * A block of springs judged side by side on one travel. Each loop runs over the springs and stores
 * one thing, in a method of its own: that is what the compiler turns into vector instructions.
 */
final class Lanes {

  static final int WIDTH = 256;

  /** One array per spring property; V = base + area·L. */
  final double[] area = new double[WIDTH];

  final Gas nominal = new Gas();
  final Gas weak = new Gas();
  final Gas strong = new Gas();

  /** Where it must rise by itself, and where it must stay put; null where that is not asked. */
  Stretch rising;

  Stretch still;

  private final double[] density = new double[WIDTH];

  /** What depends on the case. */
  static final class Gas {
    final double[] mass = new double[WIDTH];
    final double[] base = new double[WIDTH];
    final double[] friction = new double[WIDTH];
    final double[] force = new double[WIDTH];

    /** Gas force at the first and at the last sample, N. */
    final double[] first = new double[WIDTH];

    final double[] last = new double[WIDTH];
  }

  /** Sums and maxima over the travel for one number of springs. */
  static final class Hand {
    final double[] squares = new double[WIDTH];
    final double[] openWeak = new double[WIDTH];
    final double[] closeStrong = new double[WIDTH];

    /** Largest hand force opening over the stretch where it must rise by itself, weak. */
    final double[] rising = new double[WIDTH];

    /** Least friction over imbalance over the stretch where it must stay put, nominal. */
    final double[] still = new double[WIDTH];

    double rms(int lane, Travel travel) {
      return Math.sqrt(squares[lane] / travel.q().length) / travel.hand();
    }

    double open(int lane, Travel travel) {
      return openWeak[lane] / travel.hand();
    }

    double close(int lane, Travel travel) {
      return closeStrong[lane] / travel.hand();
    }
  }

  /**
   * Runs the block over a travel.
   *
   * @param used lanes in use
   * @param travel samples
   * @param counts numbers of springs
   * @param fits coefficients of p/ρ in the nominal, the weak and the strong case
   * @param hands receives the sums, one for each count
   */
  void run(int used, Travel travel, int[] counts, double[][] fits, Hand[] hands) {
    for (Hand hand : hands) {
      Arrays.fill(hand.squares, 0);
      Arrays.fill(hand.openWeak, Double.NEGATIVE_INFINITY);
      Arrays.fill(hand.closeStrong, Double.NEGATIVE_INFINITY);
      Arrays.fill(hand.rising, Double.NEGATIVE_INFINITY);
      Arrays.fill(hand.still, Double.POSITIVE_INFINITY);
    }
    int last = travel.last();
    for (int i = 0; i <= last; i++) {
      double length = travel.length()[i];
      double lever = travel.lever()[i];
      force(used, nominal, length, fits[0]);
      force(used, weak, length, fits[1]);
      force(used, strong, length, fits[2]);
      if (i == 0) {
        System.arraycopy(strong.force, 0, strong.first, 0, used);
      }
      for (int c = 0; c < counts.length; c++) {
        double pull = counts[c] * lever;
        double rub = counts[c] * Math.abs(lever);
        Hand hand = hands[c];
        squares(used, nominal, pull, travel.load()[i], rub, travel.friction(), hand.squares);
        open(used, weak, pull, travel.heavy()[i], rub, travel.friction(), hand.openWeak);
        close(used, strong, pull, travel.light()[i], rub, travel.friction(), hand.closeStrong);
        if (rising != null && rising.holds(i)) {
          open(used, weak, pull, travel.heavy()[i], rub, travel.friction(), hand.rising);
        }
        if (still != null && still.holds(i)) {
          still(used, nominal, pull, travel.load()[i], rub, travel.friction(), hand.still);
        }
      }
    }
    System.arraycopy(weak.force, 0, weak.last, 0, used);
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
  private static void squares(
      int used, Gas gas, double pull, double load, double rub, double friction, double[] sum) {
    double[] force = gas.force;
    double[] own = gas.friction;
    for (int j = 0; j < used; j++) {
      double balance = pull * force[j] + load;
      double stick = rub * own[j] + friction;
      sum[j] += balance * balance + stick * stick;
    }
  }

  private static void still(
      int used, Gas gas, double pull, double load, double rub, double friction, double[] least) {
    double[] force = gas.force;
    double[] own = gas.friction;
    for (int j = 0; j < used; j++) {
      double held = rub * own[j] + friction - Math.abs(pull * force[j] + load);
      least[j] = Math.min(least[j], held);
    }
  }

  private static void open(
      int used, Gas gas, double pull, double load, double rub, double friction, double[] most) {
    double[] force = gas.force;
    double[] own = gas.friction;
    for (int j = 0; j < used; j++) {
      most[j] = Math.max(most[j], rub * own[j] + friction - (pull * force[j] + load));
    }
  }

  private static void close(
      int used, Gas gas, double pull, double load, double rub, double friction, double[] most) {
    double[] force = gas.force;
    double[] own = gas.friction;
    for (int j = 0; j < used; j++) {
      most[j] = Math.max(most[j], pull * force[j] + load + rub * own[j] + friction);
    }
  }
}
