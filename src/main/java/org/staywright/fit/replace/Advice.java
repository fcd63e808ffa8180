package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Coded;

/**
 * What a fitter should know or do next.
 *
 * @param code of the sentence
 * @param gauge that it is about, null for none
 * @param figures that its sentence takes, SI
 */
public record Advice(Code code, @Nullable Gauge gauge, List<Double> figures) {

  /** What is advised. */
  public enum Code implements Coded {
    /** No part explains the readings. */
    NOTHING_MATCHES,
    /** Without this reading one would. */
    MEASURE_AGAIN,
    /** So many parts are alike in all that was measured, their forces from one to the other. */
    FORCE_UNKNOWN,
    /** It was found at the flap, so far off as that tells. */
    FORCE_FROM_FLAP,
    /** What is printed and what the flap asks do not go together. */
    PRINTED_DISAGREES,
    ENDS_ASSUMED,
    /** More force than a scale should be used for by hand. */
    NOT_ON_A_SCALE,
    /** No share of gas explains the scale. */
    SCALE_UNEXPLAINED,
    GAS_KEEP,
    GAS_WATCH,
    GAS_REPLACE,
    GAS_TOO_STRONG,
    /** Lost a year, and what the range counts on. */
    GAS_LOST_YEARLY
  }

  public Advice {
    figures = List.copyOf(figures);
  }

  private static Advice of(Code code, Double... figures) {
    return new Advice(code, null, List.of(figures));
  }

  /**
   * @param gas left in the old spring, empty where no scale told
   * @param years since it was made, null where unknown
   */
  public static List<Advice> of(
      Measurements old, Replacements answer, Optional<GasLeft> gas, @Nullable Double years) {
    List<Advice> all = new ArrayList<>();
    if (answer.matchesNothing()) {
      all.add(of(Code.NOTHING_MATCHES));
      answer.suspects().forEach(gauge -> all.add(new Advice(Code.MEASURE_AGAIN, gauge, List.of())));
    }
    force(old, all);
    if (old.rodEnd() == null || old.tubeEnd() == null) {
      all.add(of(Code.ENDS_ASSUMED));
    }
    if (old.scale() != null) {
      scale(old.scale(), answer, gas, years, all);
    }
    return all;
  }

  private static void force(Measurements old, List<Advice> all) {
    Reading flap = old.size(Gauge.FLAP_FORCE);
    Reading printed = old.size(Gauge.PRINTED_FORCE);
    if (!old.forceKnown()) {
      all.add(of(Code.FORCE_UNKNOWN));
    } else if (flap != null && printed == null) {
      all.add(of(Code.FORCE_FROM_FLAP, flap.value(), flap.plusMinus()));
    } else if (flap != null && printed != null && flap.disagrees(printed)) {
      all.add(of(Code.PRINTED_DISAGREES, printed.value(), flap.value(), flap.plusMinus()));
    }
  }

  private static void scale(
      ScaleReading scale,
      Replacements answer,
      Optional<GasLeft> gas,
      @Nullable Double years,
      List<Advice> all) {
    if (scale.force().value() > ScaleReading.MOST_BY_HAND) {
      all.add(of(Code.NOT_ON_A_SCALE, ScaleReading.MOST_BY_HAND));
    }
    if (gas.isEmpty()) {
      all.add(of(Code.SCALE_UNEXPLAINED));
      return;
    }
    GasLeft left = gas.get();
    Code code =
        switch (left.verdict()) {
          case KEEP -> Code.GAS_KEEP;
          case WATCH -> Code.GAS_WATCH;
          case REPLACE -> Code.GAS_REPLACE;
          case TOO_STRONG -> Code.GAS_TOO_STRONG;
        };
    all.add(of(code, left.share(), left.plusMinus()));
    if (years != null && years > 0 && !answer.found().isEmpty()) {
      double usual = answer.found().get(0).part().wear().perYear();
      all.add(of(Code.GAS_LOST_YEARLY, left.lostPerYear(years), years, usual));
    }
  }
}
