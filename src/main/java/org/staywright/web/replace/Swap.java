package org.staywright.web.replace;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.staywright.caution.Caution;
import org.staywright.caution.replace.SwapCautions;
import org.staywright.fit.replace.Advice;
import org.staywright.fit.replace.GasLeft;
import org.staywright.fit.replace.Measurements;
import org.staywright.fit.replace.Replacements;
import org.staywright.form.fit.Note;
import org.staywright.form.replace.ReplacementForm;
import org.staywright.part.Range;
import org.staywright.wording.CautionText;
import org.staywright.wording.ReplacementText;
import org.staywright.wording.Wording;

/**
 * All that is answered to what was measured of an old spring.
 *
 * @param old what was measured
 * @param answer the parts
 * @param gas left in the old spring, empty where no scale told
 * @param advice what to do next
 * @param cautions of the swap for the likeliest part
 */
public record Swap(
    Measurements old,
    Replacements answer,
    Optional<GasLeft> gas,
    List<Advice> advice,
    List<Caution> cautions) {

  public static Swap of(Range range, ReplacementForm form, LocalDate today) {
    Measurements old = form.old();
    Replacements answer = Replacements.of(range, old, form.limit());
    Optional<GasLeft> gas =
        old.scale() == null
            ? Optional.empty()
            : answer.found().stream()
                .findFirst()
                .flatMap(first -> GasLeft.of(old.scale(), first.part(), old.printedForce()));
    return new Swap(
        old,
        answer,
        gas,
        Advice.of(old, answer, gas, form.years(today)),
        answer.found().isEmpty() ? List.of() : SwapCautions.of(old, answer.found().get(0)));
  }

  /** Advice and cautions in words. */
  public List<Note> notes(Wording wording) {
    ReplacementText text = ReplacementText.in(wording);
    CautionText harm = CautionText.in(wording);
    List<Note> notes = new ArrayList<>();
    advice.forEach(one -> notes.add(new Note(one.code().code(), text.advice(one))));
    cautions.forEach(one -> notes.add(new Note(one.code(), harm.sentence(one))));
    return notes;
  }
}
