package org.staywright.fit.assess;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.staywright.fit.job.Beside;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SpringState;
import org.staywright.mechanism.Travel;

/**
 * What acts along with the springs of a job whatever they are: dampers and further springs, at
 * every sample of one travel. Weak and strong with the springs.
 */
public final class Alongside {

  private record Acting(double[] push, double[] friction) {}

  private final Travel travel;
  private final Map<SpringState, Acting> states = new EnumMap<>(SpringState.class);

  private Alongside(Travel travel) {
    this.travel = travel;
    int samples = travel.q().length;
    for (SpringState state : SpringState.values()) {
      states.put(state, new Acting(new double[samples], new double[samples]));
    }
  }

  public static Alongside nothing(Travel travel) {
    return new Alongside(travel);
  }

  public static Alongside of(Job job, Travel travel) {
    Alongside alongside = new Alongside(travel);
    alongside.states.forEach(
        (state, acting) ->
            job.beside().forEach(each -> add(each, job.conditions(), state, travel, acting)));
    return alongside;
  }

  private static void add(
      Beside beside, Job.Conditions conditions, SpringState state, Travel travel, Acting acting) {
    double kelvin = state.kelvin(conditions);
    DoubleUnaryOperator force = state.law(beside.part(), conditions).slow(kelvin);
    double rub = beside.part().spring().friction(kelvin);
    for (int i = 0; i < acting.push.length; i++) {
      double q = travel.q()[i];
      double lever = beside.mechanism().lever(q);
      double compression = beside.extended() - beside.mechanism().length(q);
      acting.push[i] += beside.count() * force.applyAsDouble(compression) * lever;
      acting.friction[i] += beside.count() * rub * Math.abs(lever);
    }
  }

  /** Without friction, positive where it opens, N·m or N. */
  public double[] push(SpringState state) {
    return states.get(state).push;
  }

  /** N·m or N. */
  public double[] friction(SpringState state) {
    return states.get(state).friction;
  }

  /** Load and push together, positive where they open, N·m or N. */
  double[] loading(Corner corner) {
    return sum(corner.load().of(travel), push(corner.spring()));
  }

  /** Friction of the mechanism and of what acts along, N·m or N. */
  double[] rubbing(Corner corner) {
    double[] friction = friction(corner.spring());
    double[] all = new double[friction.length];
    Arrays.setAll(all, i -> travel.friction() + friction[i]);
    return all;
  }

  private static double[] sum(double[] one, double[] other) {
    double[] all = new double[one.length];
    Arrays.setAll(all, i -> one[i] + other[i]);
    return all;
  }
}
