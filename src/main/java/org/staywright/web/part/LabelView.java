package org.staywright.web.part;

import java.util.List;
import org.staywright.fit.replace.LabelReading;
import org.staywright.fit.replace.LabelReading.Piece;
import org.staywright.wording.Wording;

/**
 * What was understood of a label, and what is asked about the rest.
 *
 * @param understood a sentence each
 * @param asked a question each
 */
public record LabelView(List<String> understood, List<String> asked) {

  public static LabelView of(LabelReading label, Wording wording) {
    return new LabelView(said(label.understood(), wording), said(label.asked(), wording));
  }

  private static List<String> said(List<Piece> pieces, Wording wording) {
    return pieces.stream()
        .map(piece -> wording.text("replace.label." + piece.meaning().code(), piece.text()))
        .distinct()
        .toList();
  }
}
