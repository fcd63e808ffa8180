package org.staywright.form.replace;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.staywright.fit.replace.Difference;
import org.staywright.fit.replace.FlapForce;
import org.staywright.fit.replace.GasLeft;
import org.staywright.fit.replace.Replacement;
import org.staywright.fit.replace.Replacements;
import org.staywright.form.fit.FitsJson;
import org.staywright.form.schema.JsonNumber;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/** Replacements as JSON. */
public final class ReplacementsJson {

  private ReplacementsJson() {}

  /**
   * @param flap what it asks of each spring, null where it was not surveyed
   * @param effect of a difference, in words
   * @param advice in words
   */
  public static ObjectNode of(
      Replacements answer,
      Optional<GasLeft> gas,
      FlapForce flap,
      Function<Difference, String> effect,
      List<FitsJson.Note> advice) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode candidates = json.putArray("candidates");
    for (Replacement one : answer.found()) {
      candidates.add(candidate(one, candidates.size() + 1, effect));
    }
    json.set("noneOfTheRange", JsonNumber.of(answer.outside()));
    json.set("gasLeft", gas.map(left -> JsonNumber.of(left.share())).orElse(json.nullNode()));
    json.set(
        "gasLeftPlusMinus",
        gas.map(left -> JsonNumber.of(left.plusMinus())).orElse(json.nullNode()));
    json.set("flapForce", flap == null ? json.nullNode() : flap(flap));
    ArrayNode notes = json.putArray("advice");
    advice.forEach(
        note -> notes.addObject().put("code", note.code()).put("message", note.message()));
    return json;
  }

  private static ObjectNode flap(FlapForce flap) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.set("forceN", JsonNumber.of(flap.force().reading().value()));
    json.set("plusMinusN", JsonNumber.of(flap.force().reading().plusMinus()));
    if (flap.hold() == null) {
      json.putNull("holdN").putNull("holdPlusMinusN");
    } else {
      json.set("holdN", JsonNumber.of(flap.hold().reading().value()));
      json.set("holdPlusMinusN", JsonNumber.of(flap.hold().reading().plusMinus()));
    }
    return json.put("by", flap.by().code());
  }

  private static ObjectNode candidate(
      Replacement one, int rank, Function<Difference, String> effect) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("rank", rank);
    json.put("partNumber", one.part().number());
    json.set("likelihood", JsonNumber.of(one.likelihood()));
    ArrayNode alike = json.putArray("alike");
    one.alike().forEach(alike::add);
    json.put("kind", one.kind().code());
    ArrayNode differences = json.putArray("differences");
    for (Difference difference : one.differences()) {
      ObjectNode each = differences.addObject();
      each.put("what", name(difference.what()));
      each.set("old", value(difference, difference.old()));
      each.set("new", value(difference, difference.now()));
      each.put("effect", effect.apply(difference));
    }
    if (one.rodFitting() == null) {
      json.putNull("fittings");
    } else {
      json.putObject("fittings")
          .put("rodEnd", one.rodFitting().number())
          .put("tubeEnd", one.tubeFitting().number());
    }
    return json;
  }

  private static JsonNode value(Difference difference, Object value) {
    if (value instanceof Double si) {
      return JsonNumber.of(si, difference.what().unit());
    }
    String word = value instanceof Coded coded ? coded.code() : String.valueOf(value);
    return JsonNodeFactory.instance.textNode(word);
  }

  /** "rodDiameterMm", "forceN", "finish". */
  private static String name(Difference.What what) {
    StringBuilder name = new StringBuilder();
    for (String word : what.code().split("-")) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    Unit unit = what.unit();
    return name + (unit == null ? "" : unit == Unit.NEWTON ? "N" : "Mm");
  }
}
