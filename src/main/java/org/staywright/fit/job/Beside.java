package org.staywright.fit.job;

import java.util.Optional;
import org.staywright.mechanism.Rigid;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Drag;
import org.staywright.motion.Strut;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * Parts already chosen that act along with the springs: dampers, or further springs on mounts of
 * their own. By virtual work each adds its push, F·dL/dq, and its friction; what it resists with
 * while it moves counts in time alone.
 *
 * @param part a damper or a spring
 * @param count of equal ones
 * @param rod end fitting
 * @param tube end fitting
 * @param mechanism of the job, hung on the mounts of these
 */
public record Beside(Part part, int count, Fitting rod, Fitting tube, Rigid mechanism) {

  /** Length at full extension with its end fittings, m. */
  public double extended() {
    return part.spring().extendedLength() + fittings();
  }

  /** Length at full compression with its end fittings, m. */
  public double compressed() {
    return part.spring().compressedLength() + fittings();
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
            new Fault("beside", shortest + "–" + longest, reach.text(), "beside-out-of-reach"));
  }

  private static double millimetres(double metres) {
    return Math.rint(Unit.MILLIMETRE.of(metres) * 10) / 10;
  }

  SetPrice price() {
    return SetPrice.of(count, part.offer(), rod, tube);
  }

  /** What it resists its speed with at a temperature; oil at the end of a stroke left out. */
  Drag drag(double kelvin) {
    if (part.spring() instanceof Damper damper) {
      return (q, speed) -> {
        double lever = mechanism.lever(q);
        return count * Math.abs(damper.force(-lever * speed) * lever);
      };
    }
    Strut strut = MovingPart.strut(part, kelvin);
    return (q, speed) -> {
      double lever = mechanism.lever(q);
      double compression = extended() - mechanism.length(q);
      return count * Math.abs(strut.damping(compression, -lever * speed) * lever);
    };
  }
}
