package org.staywright.form.part;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.staywright.form.schema.JsonNumber;
import org.staywright.part.Part;

/** A part of the range as JSON: its family's fields, each once. */
public final class PartJson {

  private PartJson() {}

  /**
   * @param description in words, the range's own or made from the figures
   */
  public static ObjectNode of(Part part, String description) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("partNumber", part.number());
    json.put("description", description);
    json.put("family", part.family().code());
    json.put("finish", part.finish().code());
    json.put("rodThread", part.ends().rod());
    json.put("tubeThread", part.ends().tube());
    for (PartColumn column : PartColumn.of(part.family())) {
      json.set(column.field(), JsonNumber.of(column.of(part)));
    }
    part.lock().ifPresent(lock -> json.put("locking", lock.locking().code()));
    json.put("mounting", part.mounting().code());
    OfferJson.into(json, part.offer());
    part.derived().forEach(json.putArray("derived")::add);
    return json;
  }
}
