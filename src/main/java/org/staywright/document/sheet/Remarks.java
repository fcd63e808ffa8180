package org.staywright.document.sheet;

import java.awt.Color;
import java.util.List;
import org.staywright.caution.Caution;
import org.staywright.wording.CautionText;
import org.staywright.wording.Wording;

/** Cautions as remarks on paper. */
public final class Remarks {

  private Remarks() {}

  public static List<Sheet.Remark> of(List<Caution> cautions, Wording wording) {
    CautionText text = CautionText.in(wording);
    return cautions.stream()
        .map(
            caution ->
                new Sheet.Remark(
                    text.name(caution.severity()), colour(caution), text.sentence(caution)))
        .toList();
  }

  private static Color colour(Caution caution) {
    return switch (caution.severity()) {
      case DANGER -> Paper.STOP;
      case WARNING -> Paper.HOT;
      case NOTE -> Paper.SOFT;
    };
  }
}
