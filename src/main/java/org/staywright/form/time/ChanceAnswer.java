package org.staywright.form.time;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Shape;

/** Chances, years and what matters. */
public record ChanceAnswer(
    double holds,
    double handWithinLimit,
    double staysShut,
    @Nullable Double yearsUntilNotHolding,
    @Nullable Double yearsUntilOneInTwenty,
    double holdsStandardError,
    @Nullable String mattersMost,
    @Schema(ref = "shares") Map<String, Double> holdShares,
    @Schema(ref = "shares") Map<String, Double> handShares,
    int draws,
    int seed) {

  /** Of each source. */
  public static final Shape SHARES =
      AnswerShape.shape(
          "shares",
          AnswerShape.numbers(
              Stream.of(Source.values()).map(ChanceAnswer::code).toArray(String[]::new)));

  public static ChanceAnswer of(Chance chance, int seed) {
    return new ChanceAnswer(
        chance.holds(),
        chance.handWithinLimit(),
        chance.staysShut(),
        chance.yearsUntil(0.5),
        chance.yearsUntil(0.05),
        chance.error(chance.holds()),
        chance.mattersMost() == null ? null : code(chance.mattersMost()),
        shares(chance.holdShares()),
        shares(chance.handShares()),
        chance.draws(),
        seed);
  }

  private static Map<String, Double> shares(Map<Source, Double> shares) {
    Map<String, Double> named = new LinkedHashMap<>();
    shares.forEach((source, share) -> named.put(code(source), share));
    return named;
  }

  private static String code(Source source) {
    StringBuilder code = new StringBuilder();
    for (String word : source.name().toLowerCase(Locale.ROOT).split("_")) {
      code.append(
          code.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return code.toString();
  }
}
