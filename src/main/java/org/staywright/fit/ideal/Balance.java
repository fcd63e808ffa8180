package org.staywright.fit.ideal;

import java.util.function.IntToDoubleFunction;
import org.staywright.fit.assess.Path;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;

/**
 * The straight line of force over length that keeps the load best in balance, friction left out: of
 * all lines of a bounded progression the one with the least mean square at the hand.
 *
 * <p>Virtual work: balance is n·F·L′ + Q = 0. With F = a·w, w a fixed rise over the length, the
 * least squares give a = −Σ n·L′·w·Q / Σ (n·L′·w)²; with F = a + b·c both follow from the normal
 * equations.
 *
 * @param longForce of each spring at the longest length used, N
 * @param shortForce of each spring at the shortest length used, N
 * @param handRms what the hand still has to do, root mean square over the travel, N
 */
public record Balance(double longForce, double shortForce, double handRms) {

  /** Force at the shortest length over that at the longest; gas pushes no less when pressed in. */
  public double progression() {
    return shortForce / longForce;
  }

  /**
   * @param count of springs
   * @param most progression that can be made
   */
  static Balance of(Path path, int count, double most) {
    Fit fit = Fit.of(path, count);
    double[] free = fit.line();
    double progression = (free[0] + free[1]) / free[0];
    if (free[0] > 0 && progression >= 1 && progression <= most) {
      return fit.balance(free[0], free[0] + free[1]);
    }
    Balance flat = fit.risen(1);
    Balance steep = fit.risen(most);
    return flat.handRms <= steep.handRms ? flat : steep;
  }

  /** The sums over the samples of a travel. */
  private record Fit(Travel travel, double[] load, int count) {

    static Fit of(Path path, int count) {
      double[] load = path.travel().load().clone();
      for (int i = 0; i < load.length; i++) {
        load[i] += path.alongside().push(SpringState.NOMINAL)[i];
      }
      return new Fit(path.travel(), load, count);
    }

    private double pull(int i) {
      return count * travel.lever()[i];
    }

    /** 0 at the longest length, 1 at the shortest. */
    private double pressedIn(int i) {
      double stroke = travel.longest() - travel.shortest();
      return stroke == 0 ? 0 : (travel.longest() - travel.length()[i]) / stroke;
    }

    private double sum(IntToDoubleFunction of) {
      double sum = 0;
      for (int i = 0; i <= travel.last(); i++) {
        sum += of.applyAsDouble(i);
      }
      return sum;
    }

    /** Without bounds. */
    double[] line() {
      double uu = sum(i -> pull(i) * pull(i));
      double uv = sum(i -> pull(i) * pull(i) * pressedIn(i));
      double vv = sum(i -> pull(i) * pull(i) * pressedIn(i) * pressedIn(i));
      double uq = sum(i -> -pull(i) * load[i]);
      double vq = sum(i -> -pull(i) * pressedIn(i) * load[i]);
      double determinant = uu * vv - uv * uv;
      return new double[] {(uq * vv - vq * uv) / determinant, (uu * vq - uv * uq) / determinant};
    }

    /** Of a given progression; none at all where the springs could only do harm. */
    Balance risen(double progression) {
      IntToDoubleFunction v = i -> pull(i) * (1 + (progression - 1) * pressedIn(i));
      double force =
          sum(i -> -v.applyAsDouble(i) * load[i])
              / sum(i -> v.applyAsDouble(i) * v.applyAsDouble(i));
      double pushing = Math.max(0, force);
      return balance(pushing, progression * pushing);
    }

    Balance balance(double longForce, double shortForce) {
      double squares =
          sum(
              i -> {
                double force = longForce + (shortForce - longForce) * pressedIn(i);
                double left = pull(i) * force + load[i];
                return left * left;
              });
      double rms = Math.sqrt(squares / (travel.last() + 1)) / travel.hand();
      return new Balance(longForce, shortForce, rms);
    }
  }
}
