package org.staywright.form.fit;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.assess.Fit;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.unit.Unit;

/** The figures of a fit by their names, as the table of figures has them. */
public final class FitFigures {

  /** Of the way that a load turns or shifts, and of a column under a seat: each has its own. */
  public static final Shape SHAPE = shape();

  private FitFigures() {}

  static Map<String, Object> of(Fit fit, Movement movement) {
    Map<String, Object> figures = new LinkedHashMap<>();
    for (Figure figure : Figure.of(fit)) {
      put(figures, figure.name(movement), in(figure.unit(movement), figure.value(fit)));
    }
    figures.put("setPrice", fit.setPrice());
    figures.put("leadTimeDays", fit.leadTimeDays());
    return figures;
  }

  @SuppressWarnings("unchecked") // what has members was put here
  private static void put(Map<String, Object> figures, String name, @Nullable Double value) {
    int dot = name.indexOf('.');
    if (dot < 0) {
      figures.put(name, value);
    } else {
      Object group = figures.computeIfAbsent(name.substring(0, dot), any -> new LinkedHashMap<>());
      ((Map<String, Object>) group).put(name.substring(dot + 1), value);
    }
  }

  /**
   * A value as it is told.
   *
   * @param unit null for a plain number
   * @param si null for none
   */
  static @Nullable Double in(@Nullable Unit unit, @Nullable Double si) {
    return si == null || unit == null ? si : (Double) unit.of(si.doubleValue());
  }

  private static Shape shape() {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (Figure figure : Figure.values()) {
      for (Movement movement : Movement.values()) {
        String[] name = figure.name(movement).split("\\.");
        if (name.length == 1) {
          fields.put(name[0], optional(name[0], NUMBER));
        } else {
          Shape before = fields.containsKey(name[0]) ? (Shape) fields.get(name[0]).kind() : null;
          fields.put(name[0], optional(name[0], with(before, name[0], name[1])));
        }
      }
    }
    fields.put("setPrice", optional("setPrice", NUMBER));
    fields.put("leadTimeDays", required("leadTimeDays", NUMBER));
    return new Shape("figures", fields);
  }

  private static Shape with(@Nullable Shape before, String name, String member) {
    Map<String, Field> members = new LinkedHashMap<>();
    if (before != null) {
      members.putAll(before.fields());
    }
    members.put(member, required(member, NUMBER));
    return new Shape(name, members);
  }
}
