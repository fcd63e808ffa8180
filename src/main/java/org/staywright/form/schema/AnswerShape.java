package org.staywright.form.schema;

import static org.staywright.form.schema.Field.required;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.staywright.form.schema.Kind.Amount;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Text;
import org.staywright.unit.Bound;

/** What the answers are made of, described for the OpenAPI document and its test. */
public final class AnswerShape {

  public static final Text PART_NUMBER =
      new Text(16, Pattern.compile("[A-Z0-9-]{4,16}"), "[A-Z0-9-]{4,16}");

  public static final Kind NUMBER =
      new Amount(Bound.between(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, ""));
  public static final Choice END = Choice.of("frame", "moving");

  private AnswerShape() {}

  @SafeVarargs
  public static Shape shape(String name, List<Field>... groups) {
    Map<String, Field> fields = new LinkedHashMap<>();
    for (List<Field> group : groups) {
      group.forEach(field -> fields.put(field.name(), field));
    }
    return new Shape(name, fields);
  }

  public static List<Field> numbers(String... names) {
    return Stream.of(names).map(name -> required(name, NUMBER)).toList();
  }
}
