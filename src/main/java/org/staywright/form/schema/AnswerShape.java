package org.staywright.form.schema;

import static org.staywright.form.schema.Field.required;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Kind.Text;
import org.staywright.unit.Bound;

/** What the answers are made of, described for the OpenAPI document and its test. */
public final class AnswerShape {

  public static final Text PART_NUMBER =
      new Text(16, Pattern.compile("[A-Z0-9-]{4,16}"), "[A-Z0-9-]{4,16}");

  public static final Kind NUMBER =
      new Amount(Bound.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, ""));
  public static final Kind TEXT = Text.upTo(2000);
  public static final Choice END = Choice.of("frame", "moving");

  public static final Shape ENDS =
      Shape.of("end-fittings", required("rodEnd", PART_NUMBER), required("tubeEnd", PART_NUMBER));

  /** As {@link GasBeyond} writes it. */
  public static final Shape GAS_BEYOND =
      Shape.of(
          "gas-beyond",
          required("quantity", Choice.of("temperature", "pressure", "density")),
          required("value", NUMBER),
          required("bound", TEXT));

  private AnswerShape() {}

  /** One page of a list. */
  public static Shape page(Shape item) {
    return shape(
        item.name() + "-page",
        numbers("total", "page", "size"),
        List.of(required("items", new Many(item))));
  }

  @SafeVarargs
  public static Shape shape(String name, List<Field>... groups) {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (List<Field> group : groups) {
      group.forEach(field -> fields.put(field.name(), field));
    }
    return new Shape(name, fields);
  }

  public static List<Field> numbers(String... names) {
    return all(NUMBER, names);
  }

  public static List<Field> series(String... names) {
    return all(new Many(NUMBER), names);
  }

  private static List<Field> all(Kind kind, String... names) {
    List<Field> fields = new ArrayList<>();
    for (String name : names) {
      fields.add(required(name, kind));
    }
    return fields;
  }
}
