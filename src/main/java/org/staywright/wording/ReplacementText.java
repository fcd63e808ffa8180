package org.staywright.wording;

import java.util.List;
import org.staywright.fit.replace.Advice;
import org.staywright.fit.replace.Damped;
import org.staywright.fit.replace.Difference;
import org.staywright.fit.replace.Gauge;
import org.staywright.fit.replace.Replacement.Interchange;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.unit.Unit;

/** Replacements in words. */
public final class ReplacementText {

  private final Wording wording;

  private ReplacementText(Wording wording) {
    this.wording = wording;
  }

  public static ReplacementText in(Wording wording) {
    return new ReplacementText(wording);
  }

  public String kind(Interchange kind) {
    return wording.text("replace.kind." + kind.code());
  }

  /** What the kind means, in a sentence. */
  public String about(Interchange kind) {
    return wording.text("replace.kind." + kind.code() + ".about");
  }

  public String gauge(Gauge gauge) {
    return wording.text("replace.gauge." + gauge.code());
  }

  public String what(Difference.What what) {
    return wording.text("replace.what." + what.code());
  }

  /** The old or the new value of a difference. */
  public String value(Difference difference, Object value) {
    if (value instanceof Double si) {
      return quantity(si, difference.what().unit());
    }
    return value instanceof Coded coded ? word(coded) : String.valueOf(value);
  }

  private String word(Coded value) {
    PartText parts = PartText.in(wording);
    if (value instanceof FittingType) {
      return parts.name("fitting", value);
    }
    if (value instanceof Finish) {
      return parts.name("finish", value);
    }
    if (value instanceof Family) {
      return parts.name("family", value);
    }
    return value instanceof Damped ? wording.text("replace.damped." + value.code()) : value.code();
  }

  /** What a difference does, in a sentence. */
  public String effect(Difference difference) {
    Unit unit = difference.what().unit();
    String key = "replace.effect." + difference.effect().code();
    if (unit == null) {
      return wording.text(key);
    }
    return wording.text(
        key, quantity(Math.abs(difference.more()), unit), quantity(difference.figure(), unit));
  }

  private String quantity(double si, Unit unit) {
    return wording.measure(si, unit, unit == Unit.NEWTON ? 0 : 1);
  }

  public String advice(Advice advice) {
    String key = "replace.advice." + advice.code().code();
    List<Double> figures = advice.figures();
    return switch (advice.code()) {
      case MEASURE_AGAIN -> wording.text(key, gauge(advice.gauge()));
      case NOT_ON_A_SCALE, FORCE_FROM_FLAP, PRINTED_DISAGREES ->
          wording.text(key, figures.stream().map(f -> quantity(f, Unit.NEWTON)).toArray());
      case GAS_LOST_YEARLY ->
          wording.text(
              key,
              percent(figures.get(0), 1),
              wording.shortest(figures.get(1), 1),
              percent(figures.get(2), 1));
      case GAS_KEEP, GAS_WATCH, GAS_REPLACE, GAS_TOO_STRONG ->
          wording.text(key, percent(figures.get(0), 0), percent(figures.get(1), 0));
      default -> wording.text(key);
    };
  }

  private String percent(double share, int decimals) {
    return wording.number(Unit.PERCENT.of(share), decimals) + "\u00a0%";
  }
}
