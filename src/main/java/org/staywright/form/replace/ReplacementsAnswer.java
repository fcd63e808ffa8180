package org.staywright.form.replace;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.replace.Difference;
import org.staywright.fit.replace.FlapForce;
import org.staywright.fit.replace.GasLeft;
import org.staywright.fit.replace.Replacement;
import org.staywright.fit.replace.Replacements;
import org.staywright.form.fit.EndFittings;
import org.staywright.form.fit.Note;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/** Replacements as they are sent. */
public record ReplacementsAnswer(
    List<CandidateAnswer> candidates,
    double noneOfTheRange,
    @Nullable Double gasLeft,
    @Nullable Double gasLeftPlusMinus,
    @Nullable FlapForceAnswer flapForce,
    List<Note> advice) {

  /** What the old spring may be, or be replaced by. */
  public record CandidateAnswer(
      int rank,
      @Schema(ref = "part-number") String partNumber,
      double likelihood,
      @Schema(ref = "part-numbers") List<String> alike,
      Replacement.Interchange kind,
      List<DifferenceAnswer> differences,
      @Nullable EndFittings fittings) {

    static CandidateAnswer of(Replacement one, int rank, Function<Difference, String> effect) {
      return new CandidateAnswer(
          rank,
          one.part().number(),
          one.likelihood(),
          one.alike(),
          one.kind(),
          one.differences().stream().map(each -> DifferenceAnswer.of(each, effect)).toList(),
          EndFittings.of(one.rodFitting(), one.tubeFitting()));
    }
  }

  /** In what it is unlike the old one. */
  public record DifferenceAnswer(
      String what, Object old, @JsonProperty("new") Object now, String effect) {

    static DifferenceAnswer of(Difference difference, Function<Difference, String> effect) {
      return new DifferenceAnswer(
          name(difference.what()),
          value(difference, difference.old()),
          value(difference, difference.now()),
          effect.apply(difference));
    }

    private static Object value(Difference difference, Object value) {
      if (value instanceof Double si) {
        return difference.what().unit().of(si);
      }
      return value instanceof Coded coded ? coded.code() : String.valueOf(value);
    }

    /** "rodDiameterMm", "forceN", "finish". */
    private static String name(Difference.What what) {
      StringBuilder name = new StringBuilder();
      for (String word : what.code().split("-")) {
        name.append(
            name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
      }
      Unit unit = what.unit();
      return name + (unit == null ? "" : unit == Unit.NEWTON ? "N" : "Mm");
    }
  }

  /** What the flap asks of each spring. */
  public record FlapForceAnswer(
      double forceN,
      double plusMinusN,
      @Nullable Double holdN,
      @Nullable Double holdPlusMinusN,
      FlapForce.By by) {

    /** Null where it was not surveyed. */
    static @Nullable FlapForceAnswer of(@Nullable FlapForce flap) {
      return flap == null
          ? null
          : new FlapForceAnswer(
              flap.force().reading().value(),
              flap.force().reading().plusMinus(),
              flap.hold() == null ? null : (Double) flap.hold().reading().value(),
              flap.hold() == null ? null : (Double) flap.hold().reading().plusMinus(),
              flap.by());
    }
  }

  /**
   * @param gas that the old spring still has, null where that cannot be told
   * @param flap what it asks of each spring, null where it was not surveyed
   * @param effect of a difference, in words
   * @param advice in words
   */
  public static ReplacementsAnswer of(
      Replacements answer,
      @Nullable GasLeft gas,
      @Nullable FlapForce flap,
      Function<Difference, String> effect,
      List<Note> advice) {
    List<CandidateAnswer> candidates = new ArrayList<>();
    for (Replacement one : answer.found()) {
      candidates.add(CandidateAnswer.of(one, candidates.size() + 1, effect));
    }
    return new ReplacementsAnswer(
        candidates,
        answer.outside(),
        gas == null ? null : (Double) gas.share(),
        gas == null ? null : (Double) gas.plusMinus(),
        FlapForceAnswer.of(flap),
        advice);
  }
}
