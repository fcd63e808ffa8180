package org.staywright.web.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.staywright.job.Jobs;
import org.staywright.job.SavedJob;
import org.staywright.wording.Wording;

/**
 * Saved jobs that an address names.
 *
 * @param jobs that are there and have a part chosen, each once
 * @param missing why others are left out, in words
 */
public record Ticked(List<SavedJob> jobs, List<String> missing) {

  /** As many as the interface takes. */
  private static final int MOST = 100;

  public static Ticked of(List<String> ids, Jobs saved, Wording wording) {
    List<SavedJob> found = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (String id : new LinkedHashSet<>(ids)) {
      SavedJob job = id.matches("[0-9]{1,18}") ? saved.find(Long.parseLong(id)).orElse(null) : null;
      if (job == null) {
        missing.add(wording.text("order.gone", id));
      } else if (job.choice == null) {
        missing.add(wording.text("order.nothing-chosen", JobsView.Row.of(job, wording).name()));
      } else if (found.size() == MOST) {
        missing.add(wording.text("order.too-many", JobsView.Row.of(job, wording).name(), MOST));
      } else {
        found.add(job);
      }
    }
    return new Ticked(found, missing);
  }

  List<String> ids() {
    return jobs.stream().map(job -> job.id.toString()).toList();
  }
}
