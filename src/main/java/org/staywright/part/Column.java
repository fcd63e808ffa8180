package org.staywright.part;

import java.util.function.ToDoubleFunction;
import org.staywright.spring.GasSpring;

/** The measured columns of the range: one primitive array each. SI. */
public enum Column {
  ROD_DIAMETER(part -> part.spring().rodDiameter()),
  TUBE_DIAMETER(part -> part.spring().tubeDiameter()),
  BORE_DIAMETER(part -> part.spring().boreDiameter()),
  STROKE(part -> part.spring().stroke()),
  EXTENDED_LENGTH(part -> part.spring().extendedLength()),
  COMPRESSED_LENGTH(part -> part.spring().compressedLength()),
  FORCE(part -> part.spring().force()),
  FORCE_TOLERANCE(Part::forceTolerance),
  FRICTION(part -> part.spring().friction()),
  COLD_FRICTION_FACTOR(part -> part.spring().coldFrictionFactor()),
  GAS_VOLUME(part -> part.spring().gasVolume()),
  OIL_VOLUME(part -> part.spring().oilVolume()),
  END_ZONE(part -> part.damping().endZone()),
  ORIFICE_DIAMETER(part -> part.damping().orificeDiameter()),
  ORIFICE_LENGTH(part -> part.damping().orificeLength()),
  COMPRESSION_FLOW_FACTOR(part -> part.damping().compressionFlowFactor()),
  WALL_TIME_CONSTANT(part -> part.damping().wallTimeConstant()),
  COLDEST(part -> part.limits().coldest()),
  HOTTEST(part -> part.limits().hottest()),
  PRESSURE_LIMIT(part -> part.limits().pressure()),
  LOSS_PER_YEAR(part -> part.wear().perYear()),
  LOSS_PER_CYCLE(part -> part.wear().perCycle()),
  MASS(Part::mass),
  /** Gas as filled, at F1 and at either end of its tolerance, kg: worked out once, not stored. */
  GAS_MASS(part -> part.spring().charged().gasMass()),
  GAS_MASS_LOW(part -> filled(part, -part.forceTolerance())),
  GAS_MASS_HIGH(part -> filled(part, part.forceTolerance()));

  private final ToDoubleFunction<Part> of;

  Column(ToDoubleFunction<Part> of) {
    this.of = of;
  }

  double of(Part part) {
    return of.applyAsDouble(part);
  }

  private static double filled(Part part, double more) {
    GasSpring spring = part.spring();
    return spring.charged((spring.force() + more) / spring.force(), 1).gasMass();
  }
}
