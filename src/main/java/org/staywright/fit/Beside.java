package org.staywright.fit;

import static org.staywright.unit.Unit.ROOM;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.staywright.mechanism.Mounted;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Drag;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * Dampers that work beside the springs. By virtual work each adds the push of its gas, F·dL/dq, and
 * its friction; what it resists with while it moves counts in time alone.
 *
 * @param part a damper
 * @param count of equal dampers
 * @param rod end fitting
 * @param tube end fitting
 * @param mechanism of the job, hung on the dampers' mounts
 */
public record Beside(Part part, int count, Fitting rod, Fitting tube, Mounted mechanism)
    implements Drag {

  public Damper damper() {
    return (Damper) part.spring();
  }

  /** Length at full extension with its end fittings, m. */
  public double extended() {
    return damper().extendedLength() + fittings();
  }

  /** Length at full compression with its end fittings, m. */
  public double compressed() {
    return damper().compressedLength() + fittings();
  }

  private double fittings() {
    return rod.lengthToCentre() + tube.lengthToCentre();
  }

  /** It is no stop: its stroke must span the whole travel. */
  public Optional<Fault> fault() {
    Travel own = mechanism.travel(mechanism.end());
    Bound reach = Bound.between(millimetres(compressed()), millimetres(extended()), "mm");
    double shortest = millimetres(own.shortest());
    double longest = millimetres(own.longest());
    return reach.holds(shortest) && reach.holds(longest)
        ? Optional.empty()
        : Optional.of(
            new Fault("damper", shortest + "–" + longest, reach.text(), "damper-out-of-reach"));
  }

  private static double millimetres(double metres) {
    return Math.rint(Unit.MILLIMETRE.of(metres) * 10) / 10;
  }

  /**
   * The springs' travel with the dampers on it. Their push and friction are those of 20 °C, the
   * friction at its greatest over the travel.
   */
  Travel on(Travel plain) {
    Travel own = plain.on(mechanism);
    DoubleUnaryOperator force = part.spring().law().slow(ROOM);
    double[] push = new double[own.q().length];
    double friction = 0;
    for (int i = 0; i < push.length; i++) {
      double lever = own.lever()[i];
      push[i] = count * force.applyAsDouble(extended() - own.length()[i]) * lever;
      friction = Math.max(friction, count * damper().friction(ROOM) * Math.abs(lever));
    }
    return plain.with(push, friction);
  }

  @Override
  public double at(double q, double speed) {
    double lever = mechanism.lever(q);
    return count * Math.abs(damper().force(-lever * speed) * lever);
  }
}
