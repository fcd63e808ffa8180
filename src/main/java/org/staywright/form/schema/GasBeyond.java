package org.staywright.form.schema;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.staywright.gas.BeyondEquation;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/**
 * What of a gas left which bounds of its equation of state, in units of daily use.
 *
 * @param quantity its code
 * @param value in the unit of the bound
 * @param bound where it may be
 */
public record GasBeyond(String quantity, double value, Bound bound) {

  public static GasBeyond of(BeyondEquation beyond) {
    String quantity = beyond.quantity().name().toLowerCase(Locale.ROOT);
    Bound si = beyond.bound();
    return switch (beyond.quantity()) {
      case TEMPERATURE -> in(CELSIUS, quantity, beyond.value(), si);
      case PRESSURE -> in(BAR, quantity, beyond.value(), si);
      case DENSITY -> new GasBeyond(quantity, beyond.value(), si);
    };
  }

  private static GasBeyond in(Unit unit, String quantity, double value, Bound si) {
    Bound bound = Bound.between(tidy(unit.of(si.low())), tidy(unit.of(si.high())), unit.symbol());
    return new GasBeyond(quantity, unit.of(value), bound);
  }

  /** Without the noise of conversion. */
  private static double tidy(double value) {
    return Math.rint(value * 100) / 100;
  }

  public void addTo(ObjectNode answer) {
    answer
        .putObject("beyond")
        .put("quantity", quantity)
        .put("value", value)
        .put("bound", bound.text());
  }
}
