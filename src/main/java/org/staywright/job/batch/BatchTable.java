package org.staywright.job.batch;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.database.Audit;
import org.staywright.database.Author;
import org.staywright.database.Change;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.form.batch.BatchResultAnswer;
import org.staywright.form.job.JobFile;
import org.staywright.form.schema.AnswerJson;
import org.staywright.job.task.Task;

/** Batches in the database: their jobs as they came, and what came of each. */
@ApplicationScoped
@Transactional
class BatchTable {

  private static final String COUNTED =
      "select b.id, b.name, b.created, b.state, b.total,"
          + " count(case when j.verdict = 'fits' then 1 end),"
          + " count(case when j.verdict = 'near' then 1 end),"
          + " count(case when j.verdict = 'none' then 1 end),"
          + " count(case when j.verdict = 'refused' then 1 end)"
          + " from SavedBatch b left join SavedBatchJob j on j.batch = b.id %s"
          + " group by b.id, b.name, b.created, b.state, b.total order by b.created desc";

  /** A batch with its jobs counted by verdict. */
  record Counted(
      String id,
      String name,
      Instant created,
      String state,
      int total,
      long fits,
      long near,
      long none,
      long refused) {

    Batch batch() {
      return new Batch(
          id,
          name,
          created,
          Task.State.valueOf(state.toUpperCase(Locale.ROOT)),
          total,
          new Batch.Tally((int) fits, (int) near, (int) none, (int) refused));
    }
  }

  /** A job that waits. */
  record Waiting(int row, String document) {}

  private final Audit audit;

  BatchTable(Audit audit) {
    this.audit = audit;
  }

  void add(Author author, String id, String name, List<JobFile.Row> rows) {
    SavedBatch batch = new SavedBatch();
    batch.id = id;
    batch.name = name;
    batch.state = Task.State.QUEUED.code();
    batch.total = rows.size();
    batch.persist();
    for (JobFile.Row row : rows) {
      SavedBatchJob job = new SavedBatchJob();
      job.batch = id;
      job.number = row.row();
      job.document = row.document().toString();
      job.persist();
    }
    note(author, id, Action.BEGUN, null, find(id).map(BatchTable::told).orElseThrow());
  }

  /** The newest first. */
  List<Batch> all() {
    return SavedBatch.find(COUNTED.formatted("")).project(Counted.class).stream()
        .map(Counted::batch)
        .toList();
  }

  Optional<Batch> find(String id) {
    return SavedBatch.find(COUNTED.formatted("where b.id = ?1"), id)
        .project(Counted.class)
        .firstResultOptional()
        .map(Counted::batch);
  }

  /** Jobs without a result, in the order of their file. */
  List<Waiting> waiting(String id, int most) {
    return SavedBatchJob.find(
            "select number, document from SavedBatchJob"
                + " where batch = ?1 and verdict is null order by number",
            id)
        .page(0, most)
        .project(Waiting.class)
        .list();
  }

  /** A job that another instance has judged meanwhile stays as it is: both found the same. */
  void put(String id, List<BatchResultAnswer> results) {
    for (BatchResultAnswer result : results) {
      SavedBatchJob.update(
          "verdict = :verdict, result = :result"
              + " where batch = :batch and number = :number and verdict is null",
          Map.of(
              "verdict", AnswerJson.code(result.verdict()),
              "result", AnswerJson.tree(result).toString(),
              "batch", id,
              "number", result.row()));
    }
  }

  /**
   * Sets a state unless the batch is over.
   *
   * @return whether it was not
   */
  boolean become(String id, Task.State state) {
    return SavedBatch.update(
            "state = ?1 where id = ?2 and state in ('queued', 'running')", state.code(), id)
        == 1;
  }

  /**
   * Stops it, its results kept; what is over already is deleted.
   *
   * @return whether it was not over
   */
  boolean end(Author author, String id) {
    String before = find(id).map(BatchTable::told).orElse(null);
    boolean stopped = become(id, Task.State.STOPPED);
    if (stopped) {
      note(author, id, Action.STOPPED, before, find(id).map(BatchTable::told).orElseThrow());
    } else if (before != null) {
      SavedBatchJob.delete("batch", id);
      SavedBatch.deleteById(id);
      note(author, id, Action.REMOVED, before, null);
    }
    return stopped;
  }

  private static String told(Batch batch) {
    return AnswerJson.tree(batch).toString();
  }

  private void note(
      Author author, String id, Action action, @Nullable String before, @Nullable String after) {
    audit.note(author, new Change(Subject.BATCH, id, action, before, after));
  }

  /** The first results there are, in the order of the file, as JSON texts. */
  List<String> results(String id, int most) {
    return SavedBatchJob.find(
            "select result from SavedBatchJob"
                + " where batch = ?1 and verdict is not null order by number",
            id)
        .page(0, most)
        .project(String.class)
        .list();
  }
}
