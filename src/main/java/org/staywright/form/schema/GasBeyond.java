package org.staywright.form.schema;

import static org.staywright.unit.Unit.BAR;
import static org.staywright.unit.Unit.CELSIUS;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.staywright.gas.BeyondEquation;
import org.staywright.unit.Bound;
import org.staywright.unit.Unit;

/**
 * What of a gas left which bounds of its equation of state, in units of daily use.
 *
 * @param quantity that left them
 * @param value in the unit of the bound
 * @param bound where it may be
 */
public record GasBeyond(
    BeyondEquation.Quantity quantity,
    double value,
    @Schema(implementation = String.class) Bound bound) {

  public static GasBeyond of(BeyondEquation beyond) {
    return switch (beyond.quantity()) {
      case TEMPERATURE -> in(CELSIUS, beyond);
      case PRESSURE -> in(BAR, beyond);
      case DENSITY -> new GasBeyond(beyond.quantity(), beyond.value(), beyond.bound());
    };
  }

  private static GasBeyond in(Unit unit, BeyondEquation beyond) {
    double low = tidy(unit.of(beyond.bound().low()));
    double high = tidy(unit.of(beyond.bound().high()));
    Bound bound = Bound.between(low, high, unit.symbol());
    return new GasBeyond(beyond.quantity(), unit.of(beyond.value()), bound);
  }

  /** Without the noise of conversion. */
  private static double tidy(double value) {
    return Math.rint(value * 100) / 100;
  }

  public void addTo(ObjectNode answer) {
    answer.set("beyond", AnswerJson.tree(this));
  }
}
