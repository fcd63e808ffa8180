package org.staywright.fit;

import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.Travel;
import org.staywright.motion.Course;
import org.staywright.motion.Hand;
import org.staywright.motion.OilZones;
import org.staywright.motion.Orifice;
import org.staywright.motion.Scene;
import org.staywright.motion.Strut;
import org.staywright.part.Part;
import org.staywright.spring.GasFilled;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** A fit as something that moves: its springs with their damping on the course of its job. */
public final class InTime {

  private InTime() {}

  /**
   * The load as it is, let go at the open end with all springs, new and of their force class.
   *
   * @param fit any of the job
   * @param kelvin of all there is
   * @param moving mass or inertia in place of the mechanism's, NaN for its own
   */
  public static Scene scene(Job job, Fit fit, double kelvin, double moving) {
    Mechanism mechanism = job.mechanism();
    double inertia = Double.isNaN(moving) ? mechanism.inertia().orElse(Double.NaN) : moving;
    if (Double.isNaN(inertia)) {
      throw new Refusal(new Fault("movingMass", null, "> 0 kg", "moving-mass-missing"));
    }
    double extended = extended(job, fit);
    Travel travel = new Paths(job).of(extended).travel();
    Course course = new Course(travel, travel.load(), job.drag(kelvin));
    int rod = fit.rodEndAt() == RodEnd.MOVING ? 1 : -1;
    return new Scene(
        course,
        inertia,
        strut(fit.part(), kelvin),
        fit.count(),
        extended,
        q -> rod * mechanism.rise(q).orElse(Double.NaN),
        Hand.NONE,
        course.end(),
        Scene.PATIENCE);
  }

  /**
   * A motion from rest at one end.
   *
   * @param open whether it is let go open
   * @param working springs that have not failed
   * @param hand at the handle
   * @param moving mass or inertia in place of the mechanism's, NaN for its own
   */
  public static Scene released(
      Job job, Fit fit, boolean open, double kelvin, int working, Hand hand, double moving) {
    Scene scene = scene(job, fit, kelvin, moving);
    return scene.from(open ? scene.course().end() : scene.course().start()).with(working, hand);
  }

  /** The length at which its springs are fully extended, m. */
  static double extended(Job job, Fit fit) {
    return job.mechanism() instanceof SeatColumn seat
        ? seat.end()
        : fit.figures().lengths().extended();
  }

  /**
   * A part as delivered, as it moves.
   *
   * @param kelvin of all there is
   */
  public static Strut strut(Part part, double kelvin) {
    Part.Damping damping = part.damping();
    if (!(part.spring() instanceof GasFilled gas) || damping == null) {
      return new Strut(part.spring().law(), kelvin, null, OilZones.NONE, Double.POSITIVE_INFINITY);
    }
    boolean throttled = gas.sense() > 0;
    Orifice orifice =
        new Orifice(
            damping.orificeDiameter(),
            damping.orificeLength(),
            damping.compressionFlowFactor(),
            gas.ringArea());
    OilZones zones = OilZones.of(gas.stroke(), gas.oilVolume(), gas.ringArea(), gas.boreArea());
    // The gas of a traction spring does not pass its piston.
    return new Strut(
        gas.law(),
        kelvin,
        throttled ? orifice : null,
        throttled ? zones : OilZones.NONE,
        damping.wallTimeConstant());
  }
}
