package org.staywright.form.mounts;

import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.Found;
import org.staywright.fit.mounts.Sensitivity;
import org.staywright.form.fit.CurveJson;
import org.staywright.form.fit.FitsJson;
import org.staywright.form.schema.JsonNumber;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;

/** Found mounts as JSON. */
public final class FoundJson {

  /** A slope in N per m is a thousandth of that per mm; one in m per m is the same per mm. */
  private static final double PER_MM = 1e-3;

  private FoundJson() {}

  /**
   * @param job whose mounts were looked for
   * @param cautions what a fit calls for in a job, in words
   * @param message what stands in the way, in words; null where nothing does
   */
  public static ObjectNode of(
      Job job, Found found, BiFunction<Job, Fit, List<FitsJson.Note>> cautions, String message) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("places", found.places());
    json.set("arrangements", list(job, found.arrangements(), cautions));
    json.set("near", list(job, found.near(), cautions));
    if (found.obstacle() == null) {
      json.putNull("obstacle");
    } else {
      ObjectNode obstacle = json.putObject("obstacle");
      obstacle.put("code", found.obstacle().code().code());
      obstacle.set("neededMm", JsonNumber.of(found.obstacle().needed(), MILLIMETRE));
      obstacle.set("hasMm", JsonNumber.of(found.obstacle().has(), MILLIMETRE));
      obstacle.put("message", message);
    }
    return json;
  }

  private static ArrayNode list(
      Job job, List<Arrangement> arrangements, BiFunction<Job, Fit, List<FitsJson.Note>> cautions) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (Arrangement each : arrangements) {
      Job there = job.at(each.mounts());
      ObjectNode json = list.addObject();
      json.set("mounts", mounts(each.mounts()));
      json.set(
          "fit", FitsJson.of(there, each.fit(), list.size(), fit -> cautions.apply(there, fit)));
      json.set("curve", CurveJson.of(there, each.curve()));
      Sensitivity sensitivity = each.sensitivity();
      json.set("sensitivityNPerMm", perMount(sensitivity.handForce(), PER_MM));
      ObjectNode reserves = json.putObject("sensitivityMmPerMm");
      reserves.set("compressedReserve", perMount(sensitivity.compressedReserve(), 1));
      reserves.set("extendedReserve", perMount(sensitivity.extendedReserve(), 1));
    }
    return list;
  }

  /** The mounts as a job has them. */
  public static ObjectNode mounts(Mounts mounts) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("frameMm", point(mounts.frame()));
    json.set("movingMm", point(mounts.moving()));
    json.put("rodEndAt", mounts.rodEnd().name().toLowerCase(Locale.ROOT));
    json.set("lateralOffsetMm", JsonNumber.of(MILLIMETRE.of(mounts.lateralOffset()), 15));
    return json;
  }

  /** In full: the mounts that were assessed are the mounts that are sent. */
  private static ObjectNode point(Point point) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("x", JsonNumber.of(MILLIMETRE.of(point.x()), 15));
    json.set("y", JsonNumber.of(MILLIMETRE.of(point.y()), 15));
    return json;
  }

  private static ObjectNode perMount(Sensitivity.Gradient gradient, double scale) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("frame", slope(gradient.frame(), scale));
    json.set("moving", slope(gradient.moving(), scale));
    return json;
  }

  private static ObjectNode slope(Point slope, double scale) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("x", JsonNumber.of(slope.x() * scale));
    json.set("y", JsonNumber.of(slope.y() * scale));
    return json;
  }
}
