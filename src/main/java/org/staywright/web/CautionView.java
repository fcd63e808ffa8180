package org.staywright.web;

import java.util.List;
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

  static List<CautionView> of(List<Caution> cautions, Wording wording) {
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
