package org.staywright.web.mounts;

import java.util.List;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Arrangement;
import org.staywright.fit.mounts.Found;
import org.staywright.job.task.Task;
import org.staywright.mechanism.Mounts;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.PageText;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/**
 * Where a search for mounts stands, in words.
 *
 * @param again address at which to look again, "" where there is no more to come
 * @param done of the work, percent
 * @param note what happened, "" where the answer says it all
 * @param heading of the answer, "" while there is none
 * @param obstacle why nothing fits, "" where something does
 * @param cards arrangements, the best first; where nothing fits, what misses least
 * @param mounts of theirs
 */
public record MountsView(
    String again,
    int done,
    String note,
    String heading,
    String obstacle,
    List<ArrangementCard> cards,
    List<Mounts> mounts) {

  public boolean waiting() {
    return !again.isEmpty();
  }

  static MountsView unasked() {
    return said("");
  }

  static MountsView busy() {
    return said("mounts.busy");
  }

  private static MountsView said(String key) {
    String note = key.isEmpty() ? "" : PageText.wording().text(key);
    return new MountsView("", 0, note, "", "", List.of(), List.of());
  }

  /** A search without an answer. */
  static MountsView of(Task task, String again) {
    return switch (task.state()) {
      case QUEUED, RUNNING -> {
        int percent = task.total() == 0 ? 0 : (int) (100L * task.done() / task.total());
        yield new MountsView(again, percent, "", "", "", List.of(), List.of());
      }
      case DONE, STOPPED -> said("mounts.stopped");
      case FAILED -> said("mounts.failed");
    };
  }

  /** A search with an answer, which is but a part of it where it was stopped. */
  static MountsView of(Task task, JobQuery query, Job job) {
    Found found = (Found) task.result();
    Wording wording = query.bench().wording();
    List<Arrangement> shown = found.obstacle() == null ? found.arrangements() : found.near();
    boolean cut = task.state() == Task.State.STOPPED && !shown.isEmpty();
    return new MountsView(
        "",
        100,
        cut ? wording.text("mounts.stopped.found") : "",
        wording.text(
            "mounts.found", found.arrangements().size(), wording.number(found.places(), 0)),
        found.obstacle() == null ? "" : FitText.in(wording).obstacle(found.obstacle()),
        ArrangementCard.all(query, job, shown, wording),
        shown.stream().map(Arrangement::mounts).toList());
  }
}
