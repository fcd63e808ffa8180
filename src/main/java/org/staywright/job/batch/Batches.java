package org.staywright.job.batch;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Consumer;
import org.jboss.logging.Logger;
import org.staywright.database.Author;
import org.staywright.database.Unreachable;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Progress;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.batch.BatchResultAnswer;
import org.staywright.form.job.JobFile;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.gas.BeyondEquation;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Refusal;

/**
 * Many jobs judged in the background over all cores. All of it stands in the database: results can
 * be read as they come, and what an instance leaves unfinished another takes up, or the next.
 */
@ApplicationScoped
public class Batches {

  private static final Logger LOG = Logger.getLogger(Batches.class);

  /** Judged before results are written and a stop is heard: a second's work or so. */
  private static final int PIECE = 32;

  /** How long an instance is believed to live that is not heard of. */
  private static final Duration LEASE = Duration.ofSeconds(20);

  private static final Duration LOOK = Duration.ofSeconds(5);

  /** After the range and the sample jobs. */
  private static final int LAST = 30;

  private final BatchTable table;
  private final Leases leases;
  private final Tasks tasks;
  private final CurrentRange current;
  private final LongAdder judged = new LongAdder();
  private final ScheduledExecutorService lookout =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "batches");
            thread.setDaemon(true);
            return thread;
          });

  @Inject
  Batches(BatchTable table, Tasks tasks, CurrentRange current) {
    this(table, LEASE, tasks, current);
  }

  Batches(BatchTable table, Duration lease, Tasks tasks, CurrentRange current) {
    this.table = table;
    this.leases = new Leases(lease);
    this.tasks = tasks;
    this.current = current;
  }

  /** Nobody waits for the looking: what goes wrong there is logged there. */
  @SuppressWarnings("FutureReturnValueIgnored")
  void onStart(@Observes @Priority(LAST) StartupEvent started) {
    lookout.scheduleWithFixedDelay(this::look, 0, LOOK.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Prolongs what this instance works on, and takes up what nobody does. */
  void look() {
    try {
      leases.prolong();
      leases.free().stream().limit(Tasks.MOST_OPEN - tasks.open()).forEach(this::start);
    } catch (RuntimeException unforeseen) {
      LOG.warnf("batches cannot be looked for: %s", unforeseen.getCause());
    }
  }

  /** While there still is a database to be asked. */
  void onStop(@Observes ShutdownEvent ending) {
    close();
  }

  /** Leaves what is under way to the other instances. */
  void close() {
    lookout.shutdownNow();
    tasks.close();
    try {
      leases.giveBack();
    } catch (RuntimeException gone) {
      LOG.warnf("batches stay leased for a while: %s", gone.getCause());
    }
  }

  /**
   * Begins.
   *
   * @param rows all sound
   */
  public Batch begin(Author author, String name, List<JobFile.Row> rows) {
    String id = UUID.randomUUID().toString();
    if (tasks.open() >= Tasks.MOST_OPEN) {
      throw new Tasks.Busy();
    }
    table.add(author, id, name, rows);
    start(id);
    return table.find(id).orElseThrow();
  }

  private void start(String id) {
    tasks.start(id, progress -> run(id, progress));
  }

  /** The newest first. */
  public List<Batch> all() {
    return table.all();
  }

  public Optional<Batch> find(String id) {
    return table.find(id);
  }

  /** Hands on the results there are, in the order of the file. */
  public void results(String id, Consumer<JsonNode> each) {
    results(id, JobFile.MOST, each);
  }

  /** The first of them. */
  public void results(String id, int most, Consumer<JsonNode> each) {
    table.results(id, most).forEach(text -> each.accept(JsonText.tree(text)));
  }

  /** Stops it, its results kept; what is over already is deleted. */
  public void stop(Author author, String id) {
    if (table.end(author, id)) {
      tasks.forget(id);
    }
  }

  /** How many jobs this instance has judged since it started. */
  public long judged() {
    return judged.sum();
  }

  private Object run(String id, Progress progress) {
    try {
      Batch batch = table.find(id).orElseThrow(CancellationException::new);
      int done = batch.tally().done();
      // Stopped by someone, or the program ends: then it stays as it is and goes on later.
      while (progress.goOn(done, batch.total()) && leases.take(id)) {
        List<BatchTable.Waiting> piece = table.waiting(id, PIECE);
        if (piece.isEmpty()) {
          table.become(id, Task.State.DONE);
          break;
        }
        Range range = current.get();
        table.put(id, piece.parallelStream().map(waiting -> judged(waiting, range)).toList());
        judged.add(piece.size());
        done += piece.size();
      }
      return null;
    } catch (RuntimeException unforeseen) {
      if (Unreachable.caused(unforeseen)) {
        LOG.warnf("batch %s waits for the database: %s", id, unforeseen.getCause());
        return null;
      }
      if (!(unforeseen instanceof CancellationException)) {
        LOG.errorf(unforeseen, "batch %s broke off", id);
        table.become(id, Task.State.FAILED);
      }
      throw unforeseen;
    } finally {
      // Its state stands in the database; a task that is known could not be started again.
      tasks.forget(id);
    }
  }

  private static BatchResultAnswer judged(BatchTable.Waiting waiting, Range range) {
    JsonNode document = JsonText.tree(waiting.document());
    String name = document.path("name").asText();
    try {
      Job job = JobForm.stored(document, range);
      return BatchResultAnswer.of(waiting.row(), name, job, Ranking.of(range, job));
    } catch (Refusal refusal) {
      return BatchResultAnswer.refused(waiting.row(), name, refusal);
    } catch (BeyondEquation gas) {
      return BatchResultAnswer.beyond(waiting.row(), name, gas);
    }
  }
}
