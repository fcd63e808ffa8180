package org.staywright.form.fit;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.form.schema.JsonNumber;
import org.staywright.part.Part;
import org.staywright.spring.ForceCurve;
import org.staywright.spring.LockedCurve;
import org.staywright.unit.Unit;

/** Force curves as JSON, one list for each quantity. */
public final class CurveJson {

  private CurveJson() {}

  /** Of a part over its stroke. */
  public static ObjectNode of(Part part, double kelvin, ForceCurve curve) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("partNumber", part.number());
    json.set("temperatureC", JsonNumber.of(kelvin, CELSIUS));
    json.set("compressionMm", list(curve.compression(), MILLIMETRE));
    json.set("gasForceN", list(curve.gas(), NEWTON));
    json.set("extendingN", list(curve.extending(), NEWTON));
    json.set("compressingN", list(curve.compressing(), NEWTON));
    json.set("fastCompressingN", list(curve.fastCompressing(), NEWTON));
    json.set("pressureBar", list(curve.pressure(), BAR));
    json.set("progression", JsonNumber.of(part.spring().progression()));
    return json;
  }

  /** Of a spring that locks, beyond its open force. */
  public static ObjectNode of(LockedCurve curve) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("deflectionMm", list(curve.deflection(), MILLIMETRE));
    json.set("slowN", list(curve.slow(), NEWTON));
    json.set("fastN", list(curve.fast(), NEWTON));
    json.set("stiffnessNPerMm", JsonNumber.of(MILLIMETRE.si(curve.stiffness())));
    return json;
  }

  private static ArrayNode list(double[] si, Unit unit) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (double value : si) {
      list.add(JsonNumber.of(value, unit));
    }
    return list;
  }
}
