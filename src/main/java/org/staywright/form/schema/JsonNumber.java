package org.staywright.form.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
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
    double rounded = rounded(value, figures);
    return whole(rounded)
        ? JsonNodeFactory.instance.numberNode((long) rounded)
        : JsonNodeFactory.instance.numberNode(rounded);
  }

  /** The same without a tree. */
  static void write(JsonGenerator json, double value) throws IOException {
    if (!Double.isFinite(value)) {
      json.writeNull();
      return;
    }
    double rounded = rounded(value, FIGURES);
    if (whole(rounded)) {
      json.writeNumber((long) rounded);
    } else {
      json.writeNumber(rounded);
    }
  }

  private static double rounded(double value, int figures) {
    return new BigDecimal(value, new MathContext(figures)).doubleValue();
  }

  private static boolean whole(double rounded) {
    return rounded == Math.rint(rounded) && Math.abs(rounded) < WHOLE;
  }
}
