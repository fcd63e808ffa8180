package org.staywright.web.job;

import java.util.List;
import org.staywright.job.Chosen;
import org.staywright.job.Ordering;
import org.staywright.job.order.Choice;
import org.staywright.web.fit.FitWords;
import org.staywright.wording.Wording;

/**
 * What to order for a chosen part, in words.
 *
 * @param choice as it was made
 * @param sentences what the part does, none where it is out
 * @param list of its parts
 */
public record OrderView(Choice choice, List<String> sentences, ListView list) {

  static OrderView of(Chosen chosen, Ordering ordering, Wording plain) {
    Wording wording = plain.about(chosen.job().mechanism().code());
    return new OrderView(
        chosen.choice(),
        chosen.fit() == null
            ? List.of()
            : FitWords.of(chosen.job(), chosen.fit(), wording).sentences(),
        ListView.of(List.of(chosen), ordering.list(List.of(chosen)), wording));
  }
}
