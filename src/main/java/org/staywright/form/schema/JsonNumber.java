package org.staywright.form.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.MathContext;
import org.staywright.unit.Unit;

/** Numbers as JSON writes them: whole where they are whole, without the noise of conversion. */
public final class JsonNumber {

  /** Significant figures of what we computed. */
  private static final int FIGURES = 9;

  /** Up to here a double counts in ones. */
  private static final double WHOLE = 1e15;

  private JsonNumber() {}

  /** A computed SI value in the unit of the boundary. */
  public static JsonNode of(double si, Unit unit) {
    return of(unit.of(si), FIGURES);
  }

  public static JsonNode of(double value) {
    return of(value, FIGURES);
  }

  /** Rounded to some significant figures; null where there is no such number in JSON. */
  public static JsonNode of(double value, int figures) {
    if (!Double.isFinite(value)) {
      return JsonNodeFactory.instance.nullNode();
    }
    double rounded = new BigDecimal(value, new MathContext(figures)).doubleValue();
    if (rounded == Math.rint(rounded) && Math.abs(rounded) < WHOLE) {
      return JsonNodeFactory.instance.numberNode((long) rounded);
    }
    return JsonNodeFactory.instance.numberNode(rounded);
  }
}
