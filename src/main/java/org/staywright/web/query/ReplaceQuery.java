package org.staywright.web.query;

import static org.staywright.unit.Dimension.FORCE;

import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.replace.LabelReading;
import org.staywright.form.replace.ReplacementForm;
import org.staywright.unit.Refusal;
import org.staywright.unit.TypedNumber;
import org.staywright.unit.Unit;
import org.staywright.web.field.Typed;
import org.staywright.web.shell.PageText;

/** What an address tells of an old spring: its readings, and what its label adds to them. */
public final class ReplaceQuery {

  public static final String LABEL = "label";

  /** Forces with the fields of their units. */
  private static final Map<String, String> FORCES =
      Map.of(
          "printedForce.value", "printedForce.unit",
          "scaleReading.force", "scaleReading.unit",
          "flap.first.force.value", "flap.unit",
          "flap.second.force.value", "flap.unit");

  private ReplaceQuery() {}

  /** What of an address belongs to the questions. */
  public static Map<String, List<String>> known(Map<String, List<String>> query) {
    Map<String, List<String>> known =
        Typed.of(ReplacementForm.SHAPE, query, PageText.wording()).values();
    known.replaceAll((name, texts) -> FORCES.containsKey(name) ? force(name, texts, known) : texts);
    if (query.containsKey(LABEL)) {
      known.put(LABEL, query.get(LABEL));
    }
    known.values().removeIf(texts -> texts.stream().allMatch(String::isBlank));
    return known;
  }

  /** A force with a unit of its own in the unit that stands beside it. */
  private static List<String> force(
      String name, List<String> texts, Map<String, List<String>> known) {
    String symbol = known.getOrDefault(FORCES.get(name), List.of("N")).get(0);
    Unit unit = Unit.of(symbol).filter(u -> u.dimension() == FORCE).orElse(Unit.NEWTON);
    try {
      return List.of(
          TypedNumber.read(texts.get(0), unit, unit, PageText.wording().decimalComma())
              .round(new MathContext(15))
              .toPlainString());
    } catch (Refusal unread) {
      return texts;
    }
  }

  /** Null where there is none. */
  public static LabelReading label(Map<String, List<String>> typed) {
    return typed.containsKey(LABEL) ? LabelReading.of(typed.get(LABEL).get(0)) : null;
  }

  /** With what the label says where nothing else was given for it. */
  public static Map<String, List<String>> readable(
      Map<String, List<String>> typed, LabelReading label) {
    Map<String, List<String>> values = new LinkedHashMap<>(typed);
    values.remove(LABEL);
    if (label != null && label.force() != null && !values.containsKey("printedForce.value")) {
      values.put("printedForce.value", List.of(label.force().toString()));
      values.put("printedForce.unit", List.of("N"));
    }
    if (label != null && label.madeIn() != null) {
      values.putIfAbsent("madeIn", List.of(label.madeIn()));
    }
    return values;
  }
}
