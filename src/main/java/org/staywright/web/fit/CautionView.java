package org.staywright.web.fit;

import java.util.List;
import java.util.Set;
import org.staywright.caution.Caution;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/**
 * A caution in words.
 *
 * @param severity {@code danger}, {@code warning} or {@code note}, as the stylesheet knows it
 * @param word the same to be read
 * @param sentence what may happen and what to do
 */
public record CautionView(String severity, String word, String sentence) {

  /** Those that qualify a verdict and stand beside it. */
  private static final Set<String> FOREMOST = Set.of("barely-held", "barely-shut", "slams");

  public static List<CautionView> foremost(List<Caution> cautions, Wording wording) {
    return of(cautions.stream().filter(each -> FOREMOST.contains(each.code())).toList(), wording);
  }

  public static List<CautionView> of(List<Caution> cautions, Wording wording) {
    CautionText text = CautionText.in(wording);
    return cautions.stream()
        .map(
            caution ->
                new CautionView(
                    caution.severity().code(),
                    text.name(caution.severity()),
                    text.sentence(caution)))
        .toList();
  }
}
