package org.staywright.web;

import java.util.List;
import org.staywright.fit.Arrangement;
import org.staywright.fit.Found;
import org.staywright.fit.Job;
import org.staywright.job.Task;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * Where a search for mounts stands, in words.
 *
 * @param waiting whether the page is to come again
 * @param done of the work, percent
 * @param note what happened, "" where the answer says it all
 * @param heading of the answer, "" while there is none
 * @param obstacle why nothing fits, "" where something does
 * @param cards arrangements, the best first; where nothing fits, what misses least
 */
public record MountsView(
    boolean waiting,
    int done,
    String note,
    String heading,
    String obstacle,
    List<ArrangementCard> cards) {

  static MountsView unasked() {
    return said("");
  }

  static MountsView busy() {
    return said("page.mounts.busy");
  }

  private static MountsView said(String key) {
    String note = key.isEmpty() ? "" : Say.wording().text(key);
    return new MountsView(false, 0, note, "", "", List.of());
  }

  static MountsView waiting(Task task) {
    if (task.state() == Task.State.STOPPED) {
      return said("page.mounts.stopped");
    }
    if (task.state() == Task.State.FAILED) {
      return said("page.mounts.failed");
    }
    int percent = task.total() == 0 ? 0 : (int) (100L * task.done() / task.total());
    return new MountsView(true, percent, "", "", "", List.of());
  }

  static MountsView of(JobQuery query, Job job, Found found, Wording wording) {
    List<Arrangement> shown = found.obstacle() == null ? found.arrangements() : found.near();
    return new MountsView(
        false,
        100,
        "",
        wording.text(
            "page.mounts.found", found.arrangements().size(), wording.number(found.places(), 0)),
        found.obstacle() == null ? "" : FitText.in(wording).obstacle(found.obstacle()),
        ArrangementCard.all(query, job, shown, wording));
  }
}
