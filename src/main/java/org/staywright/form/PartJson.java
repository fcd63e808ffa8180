package org.staywright.form;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLILITRE;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.PERCENT;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.part.Part;
import org.staywright.spring.GasSpring;

/** A spring of the range as JSON. */
public final class PartJson {

  /** Loss by use is quoted for so many cycles. */
  private static final double CYCLES = 10_000;

  private PartJson() {}

  /**
   * @param description in words, the range's own or made from the figures
   */
  public static ObjectNode of(Part part, String description) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    GasSpring spring = part.spring();
    json.put("partNumber", part.number());
    json.put("description", description);
    json.put("family", part.family().code());
    json.put("finish", part.finish().code());
    json.set("forceClassN", JsonNumber.of(spring.force()));
    json.set("forceToleranceN", JsonNumber.of(part.forceTolerance()));
    json.set("rodDiameterMm", JsonNumber.of(spring.rodDiameter(), MILLIMETRE));
    json.set("tubeDiameterMm", JsonNumber.of(spring.tubeDiameter(), MILLIMETRE));
    json.set("boreDiameterMm", JsonNumber.of(spring.boreDiameter(), MILLIMETRE));
    json.set("strokeMm", JsonNumber.of(spring.stroke(), MILLIMETRE));
    json.set("extendedLengthMm", JsonNumber.of(spring.extendedLength(), MILLIMETRE));
    json.set("compressedLengthMm", JsonNumber.of(spring.compressedLength(), MILLIMETRE));
    json.put("rodThread", part.ends().rod());
    json.put("tubeThread", part.ends().tube());
    json.set("gasVolumeMl", JsonNumber.of(spring.gasVolume(), MILLILITRE));
    json.set("oilVolumeMl", JsonNumber.of(spring.oilVolume(), MILLILITRE));
    json.set("endDampingMm", JsonNumber.of(part.damping().endZone(), MILLIMETRE));
    json.set("frictionN", JsonNumber.of(spring.friction()));
    json.set("coldFrictionFactor", JsonNumber.of(spring.coldFrictionFactor()));
    json.set("orificeDiameterMm", JsonNumber.of(part.damping().orificeDiameter(), MILLIMETRE));
    json.set("orificeLengthMm", JsonNumber.of(part.damping().orificeLength(), MILLIMETRE));
    json.set("compressionFlowFactor", JsonNumber.of(part.damping().compressionFlowFactor()));
    json.set("wallTimeConstantS", JsonNumber.of(part.damping().wallTimeConstant()));
    json.set("minTemperatureC", JsonNumber.of(part.limits().coldest(), CELSIUS));
    json.set("maxTemperatureC", JsonNumber.of(part.limits().hottest(), CELSIUS));
    json.set("maxPressureBar", JsonNumber.of(part.limits().pressure(), BAR));
    json.set("massKg", JsonNumber.of(part.mass()));
    json.set("lossPercentPerYear", JsonNumber.of(part.wear().perYear(), PERCENT));
    json.set("lossPercentPer10kCycles", JsonNumber.of(part.wear().perCycle() * CYCLES, PERCENT));
    json.put("mounting", part.mounting().code());
    OfferJson.into(json, part.offer());
    part.derived().forEach(json.putArray("derived")::add);
    return json;
  }
}
