package org.staywright.fit.job;

import org.staywright.motion.OilZones;
import org.staywright.motion.Orifice;
import org.staywright.motion.Strut;
import org.staywright.part.Part;
import org.staywright.spring.Cylinder;
import org.staywright.spring.ForceLaw;
import org.staywright.spring.GasFilled;

/** What a part of the range is to the laws of motion. */
public final class MovingPart {

  private MovingPart() {}

  /**
   * A part as delivered.
   *
   * @param kelvin of all there is
   */
  public static Strut strut(Part part, double kelvin) {
    return strut(part, part.spring().law(), kelvin);
  }

  /**
   * @param law of one specimen of the part
   * @param kelvin of all there is
   */
  public static Strut strut(Part part, ForceLaw law, double kelvin) {
    Part.Damping damping = part.damping();
    if (!(part.spring() instanceof GasFilled gas) || damping == null) {
      return new Strut(law, kelvin, null, OilZones.NONE, Double.POSITIVE_INFINITY);
    }
    Cylinder cylinder = gas.cylinder();
    boolean throttled = gas.sense() > 0;
    Orifice orifice =
        new Orifice(
            damping.orificeDiameter(),
            damping.orificeLength(),
            damping.compressionFlowFactor(),
            cylinder.ringArea());
    OilZones zones =
        OilZones.of(
            cylinder.stroke(), cylinder.oilVolume(), cylinder.ringArea(), cylinder.boreArea());
    // The gas of a traction spring does not pass its piston.
    return new Strut(
        law,
        kelvin,
        throttled ? orifice : null,
        throttled ? zones : OilZones.NONE,
        damping.wallTimeConstant());
  }
}
