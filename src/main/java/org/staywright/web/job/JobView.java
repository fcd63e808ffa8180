package org.staywright.web.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.staywright.document.job.OrderFile;
import org.staywright.form.job.ChoiceForm;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.order.Choice;
import org.staywright.unit.Fault;
import org.staywright.web.audit.History;
import org.staywright.web.field.FormFields;
import org.staywright.wording.Wording;

/**
 * A saved job.
 *
 * @param row the same in short
 * @param order what to order, null where nothing is chosen
 * @param files of that
 * @param amount how many are ordered, as typed
 * @param stale whether that was typed for an older version
 * @param history who changed it
 */
public record JobView(
    JobsView.Row row,
    OrderView order,
    List<FileLink> files,
    FormFields amount,
    boolean stale,
    History.OfJob history) {

  /**
   * @param typed how many, empty for as saved
   */
  static JobView of(
      SavedJob job,
      Ordering ordering,
      History.OfJob history,
      Map<String, List<String>> typed,
      List<Fault> faults,
      boolean stale,
      Wording wording) {
    Map<String, List<String>> values = new HashMap<>();
    if (typed.isEmpty() && job.choice != null) {
      Choice choice = job.choice;
      values.put("sets", List.of(choice.sets().toString()));
      values.put("spares", List.of(choice.spares().toString()));
      values.put("brackets", List.of(choice.brackets().toString()));
    }
    values.putAll(typed);
    return new JobView(
        JobsView.Row.of(job, wording),
        job.choice == null ? null : OrderView.of(ordering.chosen(job), ordering, wording),
        FileLink.of(OrderFile.OF_ONE, "/api/v1/jobs/" + job.id + "/", "", wording),
        new FormFields(wording, ChoiceForm.SHAPE, values, faults),
        stale,
        history);
  }
}
