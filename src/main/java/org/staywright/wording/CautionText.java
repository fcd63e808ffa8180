package org.staywright.wording;

import java.util.ArrayList;
import java.util.List;
import org.staywright.caution.Caution;
import org.staywright.caution.Caution.Severity;

/** Cautions in words. */
public final class CautionText {

  private final Wording wording;

  private CautionText(Wording wording) {
    this.wording = wording;
  }

  public static CautionText in(Wording wording) {
    return new CautionText(wording);
  }

  /** The sentence, its figures filled in. */
  public String sentence(Caution caution) {
    List<Object> gaps = new ArrayList<>();
    caution.figures().forEach(figure -> gaps.add(shown(figure)));
    String key = "caution." + caution.code();
    if (caution.at() == null) {
      return wording.text(key, gaps.toArray());
    }
    gaps.add(CornerText.of(caution.at().corner(), wording));
    return wording.text(key + "." + caution.at().end(), gaps.toArray());
  }

  private String shown(Caution.Figure figure) {
    return wording.quantity(figure.si(), figure.unit(), figure.decimals(), figure.rounding());
  }

  /** "Danger", "Warning", "Note". */
  public String name(Severity severity) {
    return wording.text("caution.severity." + severity.code());
  }
}
