package org.staywright.part;

import java.util.function.ToDoubleFunction;
import org.staywright.spring.Cylinder;

/**
 * The measured columns of the range: one primitive array each, NaN where a part has nothing of the
 * kind. SI.
 */
public enum Column {
  ROD_DIAMETER(part -> part.spring().rodDiameter()),
  TUBE_DIAMETER(part -> part.spring().tubeDiameter()),
  BORE_DIAMETER(part -> gas(part, Cylinder::boreDiameter)),
  STROKE(part -> part.spring().stroke()),
  EXTENDED_LENGTH(part -> part.spring().extendedLength()),
  COMPRESSED_LENGTH(part -> part.spring().compressedLength()),
  FORCE(part -> part.spring().force()),
  FORCE_TOLERANCE(Part::forceTolerance),
  FRICTION(part -> part.spring().friction()),
  COLD_FRICTION_FACTOR(part -> part.spring().coldFrictionFactor()),
  GAS_VOLUME(part -> gas(part, Cylinder::gasVolume)),
  OIL_VOLUME(part -> gas(part, Cylinder::oilVolume)),
  END_ZONE(part -> damping(part, Part.Damping::endZone)),
  ORIFICE_DIAMETER(part -> damping(part, Part.Damping::orificeDiameter)),
  ORIFICE_LENGTH(part -> damping(part, Part.Damping::orificeLength)),
  COMPRESSION_FLOW_FACTOR(part -> damping(part, Part.Damping::compressionFlowFactor)),
  WALL_TIME_CONSTANT(part -> damping(part, Part.Damping::wallTimeConstant)),
  COLDEST(part -> part.limits().coldest()),
  HOTTEST(part -> part.limits().hottest()),
  PRESSURE_LIMIT(part -> part.limits().pressure()),
  LOSS_PER_YEAR(part -> part.wear().perYear()),
  LOSS_PER_CYCLE(part -> part.wear().perCycle()),
  MASS(Part::mass),
  /**
   * Gas as filled, at F1 and at either end of its tolerance, kg: worked out once, not stored. Only
   * of what works as an open gas spring.
   */
  GAS_MASS(part -> filled(part, 0)),
  GAS_MASS_LOW(part -> filled(part, -part.forceTolerance())),
  GAS_MASS_HIGH(part -> filled(part, part.forceTolerance()));

  private final ToDoubleFunction<Part> of;

  Column(ToDoubleFunction<Part> of) {
    this.of = of;
  }

  double of(Part part) {
    return of.applyAsDouble(part);
  }

  private static double gas(Part part, ToDoubleFunction<Cylinder> of) {
    return part.gas().map(gas -> of.applyAsDouble(gas.cylinder())).orElse(Double.NaN);
  }

  private static double damping(Part part, ToDoubleFunction<Part.Damping> of) {
    return part.damping() == null ? Double.NaN : of.applyAsDouble(part.damping());
  }

  private static double filled(Part part, double more) {
    return part.spring()
        .asGasSpring()
        .map(open -> open.charged((open.force() + more) / open.force(), 1).gasMass())
        .orElse(Double.NaN);
  }
}
