package org.staywright.form.part;

import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.form.schema.JsonNumber;
import org.staywright.part.Fitting;

/** An end fitting or bracket as JSON; what does not apply to it is left out. */
public final class FittingJson {

  private FittingJson() {}

  /**
   * @param description in words, the range's own or made from the figures
   */
  public static ObjectNode of(Fitting fitting, String description) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("partNumber", fitting.number());
    json.put("description", description);
    json.put("type", fitting.type().code());
    json.put("finish", fitting.finish().code());
    if (fitting.thread() != null) {
      json.put("thread", fitting.thread());
    }
    json.set("lengthToCentreMm", JsonNumber.of(fitting.lengthToCentre(), MILLIMETRE));
    json.set("ratingN", JsonNumber.of(fitting.rating()));
    json.set("swingDeg", JsonNumber.of(fitting.swing(), DEGREE));
    if (fitting.ballDiameter() > 0) {
      json.set("ballDiameterMm", JsonNumber.of(fitting.ballDiameter(), MILLIMETRE));
    }
    if (fitting.pinDiameter() > 0) {
      json.set("pinDiameterMm", JsonNumber.of(fitting.pinDiameter(), MILLIMETRE));
    }
    json.set("massKg", JsonNumber.of(fitting.mass()));
    OfferJson.into(json, fitting.offer());
    return json;
  }
}
