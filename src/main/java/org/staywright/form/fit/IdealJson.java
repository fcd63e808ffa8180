package org.staywright.form.fit;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.MILLILITRE;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Balance;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Shape;
import org.staywright.spring.GasSpring;

/** The spring that would be made for a job, beside the best of the range. */
public final class IdealJson {

  private static final Shape BALANCE =
      shape("balance", numbers("longForceN", "shortForceN", "progression", "handRmsN"));

  /** No such part can be ordered, nor ranked: its number is empty. */
  private static final Shape MADE_FIT =
      shape(
          "made-fit",
          List.copyOf(FitAnswer.JUDGED_SHAPE.fields().values()),
          List.of(required("partNumber", AnswerShape.TEXT), optional("score", NUMBER)));

  private static final Shape MADE =
      shape(
          "made-spring",
          numbers(
              "forceN",
              "forceToleranceN",
              "progression",
              "strokeMm",
              "extendedLengthMm",
              "compressedLengthMm",
              "rodDiameterMm",
              "tubeDiameterMm",
              "gasVolumeMl",
              "oilVolumeMl",
              "restPressureBar"),
          List.of(required("fit", MADE_FIT)));

  private static final Shape ROOM = shape("room", numbers("neededMm", "hasMm"));

  private static final Shape COSTS = shape("costs", numbers("handRmsN", "handForceN"));

  public static final Shape IDEAL =
      shape(
          "ideal",
          List.of(
              required("count", NUMBER),
              required("balance", BALANCE),
              optional("made", MADE),
              optional("room", ROOM),
              optional("stock", FitAnswer.JUDGED_SHAPE),
              optional("costs", COSTS),
              optional("bare", FitAnswer.BARE),
              required("advice", Choice.of(Ideal.Advice.class))));

  private IdealJson() {}

  /** Under {@code made.fit} the part number is empty: no such part can be ordered. */
  public static ObjectNode of(Job job, Ideal ideal, Function<Fit, List<FitsJson.Note>> cautions) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("count", ideal.count());
    Balance line = ideal.balance();
    ObjectNode balance = json.putObject("balance");
    balance.set("longForceN", JsonNumber.of(line.longForce()));
    balance.set("shortForceN", JsonNumber.of(line.shortForce()));
    balance.set("progression", JsonNumber.of(line.progression()));
    balance.set("handRmsN", JsonNumber.of(line.handRms()));
    json.set("made", ideal.made() == null ? null : made(job, ideal.made(), cautions));
    json.set("room", room(ideal));
    json.set("stock", ideal.stock() == null ? null : FitsJson.of(job, ideal.stock(), 1, cautions));
    json.set("costs", costs(ideal));
    json.set("bare", FitsJson.bare(ideal.bare()));
    json.put("advice", ideal.advice().code());
    return json;
  }

  private static ObjectNode made(Job job, Fit fit, Function<Fit, List<FitsJson.Note>> cautions) {
    GasSpring spring = (GasSpring) fit.part().spring();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("forceN", JsonNumber.of(spring.force()));
    json.set("forceToleranceN", JsonNumber.of(fit.part().forceTolerance()));
    json.set("progression", JsonNumber.of(spring.progression()));
    json.set("strokeMm", JsonNumber.of(spring.stroke(), MILLIMETRE));
    json.set("extendedLengthMm", JsonNumber.of(spring.extendedLength(), MILLIMETRE));
    json.set("compressedLengthMm", JsonNumber.of(spring.compressedLength(), MILLIMETRE));
    json.set("rodDiameterMm", JsonNumber.of(spring.rodDiameter(), MILLIMETRE));
    json.set("tubeDiameterMm", JsonNumber.of(spring.tubeDiameter(), MILLIMETRE));
    json.set("gasVolumeMl", JsonNumber.of(spring.cylinder().gasVolume(), MILLILITRE));
    json.set("oilVolumeMl", JsonNumber.of(spring.cylinder().oilVolume(), MILLILITRE));
    json.set("restPressureBar", JsonNumber.of(spring.restPressure(), BAR));
    json.set("fit", FitsJson.of(job, fit, 1, cautions));
    return json;
  }

  private static JsonNode room(Ideal ideal) {
    if (ideal.shortfall() == null) {
      return null;
    }
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("neededMm", JsonNumber.of(ideal.shortfall().needed(), MILLIMETRE));
    json.set("hasMm", JsonNumber.of(ideal.shortfall().has(), MILLIMETRE));
    return json;
  }

  private static JsonNode costs(Ideal ideal) {
    if (ideal.costsRms() == null) {
      return null;
    }
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("handRmsN", JsonNumber.of(ideal.costsRms()));
    json.set("handForceN", JsonNumber.of(ideal.costsMost()));
    return json;
  }
}
