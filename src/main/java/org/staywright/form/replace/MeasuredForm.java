package org.staywright.form.replace;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.withDefault;
import static org.staywright.unit.Unit.MILLIMETRE;
import static org.staywright.unit.Unit.NEWTON;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.part.Column;
import org.staywright.part.MeasuredSpring;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** Measured sizes with their tolerances, from form fields: every fault at once, or the search. */
public final class MeasuredForm {

  /** Its fields; a tolerance stands for what a calliper, a tape and a worn label give. */
  public static final Shape MEASURED =
      Shape.of(
          "measured",
          optional("rodDiameterMm", Amount.positive(200, MILLIMETRE)),
          withDefault("rodPlusMinusMm", Amount.positive(50, MILLIMETRE), 0.2),
          optional("tubeDiameterMm", Amount.positive(200, MILLIMETRE)),
          withDefault("tubePlusMinusMm", Amount.positive(50, MILLIMETRE), 0.5),
          optional("extendedLengthMm", Amount.positive(5000, MILLIMETRE)),
          withDefault("extendedPlusMinusMm", Amount.positive(500, MILLIMETRE), 5),
          optional("strokeMm", Amount.positive(2000, MILLIMETRE)),
          withDefault("strokePlusMinusMm", Amount.positive(500, MILLIMETRE), 5),
          optional("forceN", Amount.positive(20_000, NEWTON)),
          withDefault("forcePlusMinusN", Amount.positive(5000, NEWTON), 50),
          withDefault("inStockOnly", new Flag(), false),
          withDefault("page", new Whole(1, 100_000), 1));

  /**
   * @param measured what to look for
   * @param page from 1
   */
  public record Asked(MeasuredSpring measured, int page) {}

  private MeasuredForm() {}

  /** The values with every default filled in; a refusal names every fault in them. */
  public static JsonNode withDefaults(Map<String, List<String>> values) {
    List<Fault> faults = new ArrayList<>();
    JsonNode tree = MEASURED.read(FlatForm.typed(MEASURED, values), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return tree;
  }

  /** The search that a tree with its defaults asks for. */
  public static Asked read(JsonNode tree) {
    Map<Column, MeasuredSpring.Figure> figures = new EnumMap<>(Column.class);
    put(figures, Column.ROD_DIAMETER, tree, "rodDiameterMm", "rodPlusMinusMm", MILLIMETRE);
    put(figures, Column.TUBE_DIAMETER, tree, "tubeDiameterMm", "tubePlusMinusMm", MILLIMETRE);
    put(
        figures,
        Column.EXTENDED_LENGTH,
        tree,
        "extendedLengthMm",
        "extendedPlusMinusMm",
        MILLIMETRE);
    put(figures, Column.STROKE, tree, "strokeMm", "strokePlusMinusMm", MILLIMETRE);
    put(figures, Column.FORCE, tree, "forceN", "forcePlusMinusN", NEWTON);
    return new Asked(
        new MeasuredSpring(figures, tree.get("inStockOnly").booleanValue()),
        tree.get("page").intValue());
  }

  private static void put(
      Map<Column, MeasuredSpring.Figure> figures,
      Column column,
      JsonNode tree,
      String name,
      String tolerance,
      Unit unit) {
    JsonNode value = tree.get(name);
    if (!value.isNull()) {
      figures.put(
          column,
          new MeasuredSpring.Figure(
              unit.si(value.doubleValue()), unit.si(tree.get(tolerance).doubleValue())));
    }
  }
}
