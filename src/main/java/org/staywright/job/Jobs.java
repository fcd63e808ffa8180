package org.staywright.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.OptimisticLockException;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.fit.job.Job;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.JsonText;
import org.staywright.job.order.Choice;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * The saved jobs. Whatever changes one names the version it has seen and who changes it; the audit
 * tells of it in the same transaction.
 */
@ApplicationScoped
@Transactional
public class Jobs {

  private final Clock clock = Clock.systemUTC();
  private final Audit audit;

  Jobs(Audit audit) {
    this.audit = audit;
  }

  /** Stores a job with every default filled in. */
  public SavedJob add(Author author, ObjectNode document) {
    SavedJob job = new SavedJob();
    job.created = now();
    write(job, document);
    job.persistAndFlush();
    note(author, job.id, Action.ADDED, null, shown(job));
    return job;
  }

  public Optional<SavedJob> find(long id) {
    return SavedJob.findByIdOptional(id);
  }

  /** Jobs that are to share a list; a refusal names each that is not there or has no choice. */
  public List<SavedJob> all(List<Long> ids) {
    List<Fault> faults = new ArrayList<>();
    List<SavedJob> found = new ArrayList<>();
    for (int i = 0; i < ids.size(); i++) {
      SavedJob job = SavedJob.findById(ids.get(i));
      if (job == null || job.choice == null) {
        String code = job == null ? "no-such-job" : "nothing-chosen";
        faults.add(new Fault("#/jobs/" + i, ids.get(i), "", code));
      }
      found.add(job);
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return found;
  }

  public long count() {
    return SavedJob.count();
  }

  /** The newest first. */
  public List<SavedJob> page(int page, int size) {
    return SavedJob.<SavedJob>findAll(Sort.descending("id")).page(page, size).list();
  }

  /**
   * Replaces the document. A choice stays if it still does, else the change is refused.
   *
   * @param range that the choice was made from, null where there is none
   */
  public SavedJob change(Author author, long id, int version, ObjectNode document, Range range) {
    SavedJob job = seen(id, version);
    String before = shown(job);
    if (job.choice != null) {
      Choosing.again(JobForm.read(document, range), range, job.choice);
    }
    write(job, document);
    return flushed(author, Action.CHANGED, before, job);
  }

  public void remove(Author author, long id, int version) {
    SavedJob job = seen(id, version);
    String before = shown(job);
    job.delete();
    flush();
    note(author, id, Action.REMOVED, before, null);
  }

  /** Freezes a part of a range for a job, unless it is out for it. */
  public SavedJob choose(Author author, long id, int version, Range range, ChoiceForm wish) {
    SavedJob job = seen(id, version);
    String before = shown(job);
    Choice earlier = job.choice;
    job.choice = Choosing.first(read(job, range), range, wish, now());
    job.changed = now();
    Action action = job.choice.repeats(earlier) ? Action.ORDERED : Action.CHOSEN;
    return flushed(author, action, before, job);
  }

  public SavedJob unchoose(Author author, long id, int version) {
    SavedJob job = seen(id, version);
    String before = shown(job);
    job.choice = null;
    job.changed = now();
    return flushed(author, Action.UNCHOSEN, before, job);
  }

  /**
   * The job in SI.
   *
   * @param range that parts beside its springs are taken from
   */
  public static Job read(SavedJob job, Range range) {
    return JobForm.stored(document(job), range);
  }

  /** With every default filled in. */
  public static ObjectNode document(SavedJob job) {
    byte[] text = job.document.getBytes(StandardCharsets.UTF_8);
    return (ObjectNode) JsonText.read(text).tree();
  }

  private void write(SavedJob job, ObjectNode document) {
    job.name = document.get("name").textValue();
    job.document = document.toString();
    job.changed = now();
  }

  private static SavedJob seen(long id, int version) {
    SavedJob job = SavedJob.findById(id);
    if (job == null || job.version != version) {
      throw new Stale();
    }
    return job;
  }

  private SavedJob flushed(Author author, Action action, String before, SavedJob job) {
    flush();
    note(author, job.id, action, before, shown(job));
    return job;
  }

  private static void flush() {
    try {
      SavedJob.flush();
    } catch (OptimisticLockException e) {
      throw new Stale();
    }
  }

  /** As the interface shows it. */
  private static String shown(SavedJob job) {
    return AnswerJson.tree(SavedJobAnswer.of(job)).toString();
  }

  private void note(
      Author author, long id, Action action, @Nullable String before, @Nullable String after) {
    audit.note(author, new Change(Subject.JOB, Long.toString(id), action, before, after));
  }

  /** As fine as every database keeps it. */
  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.MILLIS);
  }
}
