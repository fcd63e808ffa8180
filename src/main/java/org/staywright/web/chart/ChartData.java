package org.staywright.web.chart;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.staywright.document.draw.Readings;
import org.staywright.document.draw.Role;
import org.staywright.wording.Wording;

/** A chart in JSON, as {@code js/chart.js} draws it: in the reader's units and words. */
final class ChartData {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private ChartData() {}

  /**
   * @param places of all values along x
   * @param columns values of each series
   */
  static String of(Readings chart, double[] places, List<double[]> columns, Wording wording) {
    ObjectNode data = JSON.objectNode();
    measure(data.putObject("along"), chart.along(), wording);
    measure(data.putObject("up"), chart.up(), wording);
    data.set("x", numbers(places, chart.along(), wording));
    ArrayNode series = data.putArray("series");
    for (int i = 0; i < columns.size(); i++) {
      Readings.Series each = chart.series().get(i);
      ObjectNode one = named(series.addObject(), each.name(), each.role());
      one.put("look", each.look().name().toLowerCase(Locale.ROOT));
      one.set("y", numbers(columns.get(i), chart.up(), wording));
    }
    ArrayNode bands = data.putArray("bands");
    for (Readings.Band band : chart.bands()) {
      bands.addObject().put("lower", band.lower()).put("upper", band.upper());
    }
    ArrayNode levels = data.putArray("levels");
    for (Readings.Level level : chart.levels()) {
      ObjectNode one = named(levels.addObject(), level.name(), level.role());
      one.put("y", rounded(level.value(), chart.up(), wording));
    }
    ArrayNode stretches = data.putArray("stretches");
    for (Readings.Stretch stretch : chart.stretches()) {
      named(stretches.addObject(), stretch.name(), stretch.role())
          .put("from", rounded(stretch.from(), chart.along(), wording))
          .put("to", rounded(stretch.to(), chart.along(), wording));
    }
    ArrayNode marks = data.putArray("marks");
    for (Readings.Mark mark : chart.marks()) {
      named(marks.addObject(), mark.name(), mark.role())
          .put("x", rounded(mark.x(), chart.along(), wording))
          .put("y", rounded(mark.y(), chart.up(), wording));
    }
    return data.toString();
  }

  private static ObjectNode named(ObjectNode node, String name, Role role) {
    String look = role.name().toLowerCase(Locale.ROOT).replace('_', '-');
    return node.put("name", name).put("role", look);
  }

  private static void measure(ObjectNode node, Readings.Measure measure, Wording wording) {
    node.put("name", measure.name()).put("decimals", measure.decimals(wording));
  }

  private static ArrayNode numbers(double[] values, Readings.Measure measure, Wording wording) {
    ArrayNode numbers = JSON.arrayNode();
    for (double value : values) {
      if (Double.isNaN(value)) {
        numbers.addNull();
      } else {
        numbers.add(rounded(value, measure, wording));
      }
    }
    return numbers;
  }

  /** A decimal more than is shown. */
  private static BigDecimal rounded(double value, Readings.Measure measure, Wording wording) {
    return BigDecimal.valueOf(measure.shown(value, wording))
        .setScale(measure.decimals(wording) + 1, RoundingMode.HALF_EVEN);
  }
}
