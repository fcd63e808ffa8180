package org.staywright.wording;

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
    Object[] figures = caution.figures().stream().map(this::shown).toArray();
    return wording.text("caution." + caution.code(), figures);
  }

  private String shown(Caution.Figure figure) {
    return figure.unit() == null
        ? wording.number(figure.si(), figure.decimals())
        : wording.quantity(figure.si(), figure.unit(), figure.decimals());
  }

  /** "Danger", "Warning", "Note". */
  public String name(Severity severity) {
    return wording.text("caution.severity." + severity.code());
  }
}
