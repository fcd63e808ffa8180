package org.staywright.form.time;

import static org.staywright.unit.Unit.CELSIUS;
import static org.staywright.unit.Unit.DEGREE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.staywright.fit.assess.Kept;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Requirements;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.form.schema.JsonNumber;
import org.staywright.mechanism.Mechanism;
import org.staywright.motion.Motion;
import org.staywright.unit.Unit;

/** What becomes of a fit in time, as JSON. */
public final class InTimeJson {

  private InTimeJson() {}

  /** A motion: travel and speed over time. */
  public static ObjectNode of(Job job, Motion motion) {
    Unit unit = job.mechanism().movement() == Mechanism.Movement.TURNS ? DEGREE : MILLIMETRE;
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("timeS", list(motion.time(), JsonNumber::of));
    json.set("travel", list(motion.q(), value -> JsonNumber.of(value, unit)));
    json.put("travelUnit", unit == DEGREE ? "deg" : "mm");
    json.set("speed", list(motion.speed(), value -> JsonNumber.of(value, unit)));
    json.set("gasTemperatureC", list(motion.gasKelvin(), value -> JsonNumber.of(value, CELSIUS)));
    json.set("endTimeS", JsonNumber.of(motion.endTime()));
    json.set("endSpeed", JsonNumber.of(motion.endSpeed(), unit));
    json.set("stopEnergyJ", JsonNumber.of(motion.stopEnergy()));
    json.set("peakMountLoadN", JsonNumber.of(motion.peakLoad()));
    json.put("choked", motion.choked());
    json.put("endedAt", motion.end().name().toLowerCase(Locale.ROOT));
    return json;
  }

  /** What a fit does in time at worst, and the requirements in time, each kept or not. */
  public static ObjectNode of(TimeFigures figures, Requirements asked) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("stopSpeedMmPerS", JsonNumber.of(figures.opening().stopSpeed().value(), MILLIMETRE));
    json.set("stopEnergyJ", JsonNumber.of(figures.opening().stopEnergy().value()));
    json.set("openingTimeS", finite(figures.opening().time().value()));
    json.set("peakMountLoadN", JsonNumber.of(figures.peakLoad()));
    json.put("choked", figures.choked());
    json.put("whenOneFails", figures.failing().name().toLowerCase(Locale.ROOT));
    json.set("failedEndTimeS", finite(figures.failingTime()));
    json.set("failedSpeedMmPerS", JsonNumber.of(figures.failingSpeed(), MILLIMETRE));
    json.set("failedEnergyJ", JsonNumber.of(figures.failingEnergy()));
    json.set("failedHandN", JsonNumber.of(Math.max(0, figures.failedForce())));
    ArrayNode kept = json.putArray("requirements");
    figures.opening().kept(asked).forEach(each -> kept.add(kept(each)));
    return json;
  }

  private static ObjectNode kept(Kept kept) {
    Unit unit = kept.criterion().unit(null);
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("code", "max-" + kept.criterion().code());
    json.set("most", JsonNumber.of(unit.of(kept.needed())));
    json.set("has", finite(unit.of(kept.has())));
    json.put("unit", unit.symbol());
    json.put("met", kept.met());
    json.put("spring", kept.corner().spring().code());
    json.put("load", kept.corner().load().code());
    return json;
  }

  /** Chances, years and what matters. */
  public static ObjectNode of(Chance chance, int seed) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("holds", JsonNumber.of(chance.holds()));
    json.set("handWithinLimit", JsonNumber.of(chance.handWithinLimit()));
    json.set("staysShut", JsonNumber.of(chance.staysShut()));
    json.set("yearsUntilNotHolding", finite(chance.yearsUntil(0.5)));
    json.set("yearsUntilOneInTwenty", finite(chance.yearsUntil(0.05)));
    json.set("holdsStandardError", JsonNumber.of(chance.error(chance.holds())));
    json.put("mattersMost", chance.mattersMost() == null ? null : code(chance.mattersMost()));
    json.set("holdShares", shares(chance.holdShares()));
    json.set("handShares", shares(chance.handShares()));
    json.put("draws", chance.draws());
    json.put("seed", seed);
    return json;
  }

  /** Null for never. */
  private static JsonNode finite(double value) {
    return Double.isInfinite(value) ? JsonNodeFactory.instance.nullNode() : JsonNumber.of(value);
  }

  private static ObjectNode shares(Map<Source, Double> shares) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    shares.forEach((source, share) -> json.set(code(source), JsonNumber.of(share)));
    return json;
  }

  static String code(Source source) {
    StringBuilder code = new StringBuilder();
    for (String word : source.name().toLowerCase(Locale.ROOT).split("_")) {
      code.append(
          code.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return code.toString();
  }

  private static ArrayNode list(double[] values, DoubleFunction<JsonNode> number) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    for (double value : values) {
      list.add(number.apply(value));
    }
    return list;
  }
}
