package org.staywright.job;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.jboss.logging.Logger;
import org.staywright.fit.Job;
import org.staywright.fit.Progress;
import org.staywright.fit.Ranking;
import org.staywright.form.BatchJson;
import org.staywright.form.JobFile;
import org.staywright.form.JobForm;
import org.staywright.form.JsonText;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Refusal;

/**
 * Many jobs judged in the background over all cores. All of it stands in the database: results can
 * be read as they come, and what was under way when the program ended goes on when it starts.
 */
@ApplicationScoped
public class Batches {

  private static final Logger LOG = Logger.getLogger(Batches.class);

  /** Judged before results are written and a stop is heard: a second's work or so. */
  private static final int PIECE = 32;

  /** After the range and the sample jobs. */
  private static final int LAST = 30;

  private final BatchTable table;
  private final Tasks tasks;
  private final CurrentRange current;

  public Batches(BatchTable table, Tasks tasks, CurrentRange current) {
    this.table = table;
    this.tasks = tasks;
    this.current = current;
  }

  void onStart(@Observes @Priority(LAST) StartupEvent started) {
    resume();
  }

  /** Goes on with whatever is not over. */
  void resume() {
    table.all().stream()
        .filter(batch -> !batch.state().over())
        .limit(Tasks.MOST_OPEN)
        .forEach(batch -> start(batch.id()));
  }

  /**
   * Begins.
   *
   * @param rows all sound
   */
  public Batch begin(String name, List<JobFile.Row> rows) {
    String id = UUID.randomUUID().toString();
    if (tasks.open() >= Tasks.MOST_OPEN) {
      throw new Tasks.Busy();
    }
    table.add(id, name, rows);
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
    table.results(id, most, text -> each.accept(tree(text)));
  }

  /** Stops it, its results kept; what is over already is deleted. */
  public void stop(String id) {
    if (table.become(id, Task.State.STOPPED)) {
      tasks.forget(id);
    } else {
      table.delete(id);
    }
  }

  private Object run(String id, Progress progress) {
    try {
      Batch batch = table.find(id).orElseThrow(CancellationException::new);
      int done = batch.tally().done();
      for (List<BatchTable.Waiting> piece = next(id);
          !piece.isEmpty();
          done += piece.size(), piece = next(id)) {
        if (!progress.goOn(done, batch.total())) {
          // Stopped by someone, or the program ends: then it stays as it is and goes on later.
          throw new CancellationException();
        }
        Range range = current.get();
        table.put(id, piece.parallelStream().map(waiting -> judged(waiting, range)).toList());
      }
      table.become(id, Task.State.DONE);
      return null;
    } catch (CancellationException stopped) {
      throw stopped;
    } catch (RuntimeException unforeseen) {
      LOG.errorf(unforeseen, "batch %s broke off", id);
      table.become(id, Task.State.FAILED);
      throw unforeseen;
    }
  }

  /** None where someone has stopped it, on whatever instance. */
  private List<BatchTable.Waiting> next(String id) {
    return table.become(id, Task.State.RUNNING) ? table.waiting(id, PIECE) : List.of();
  }

  private static ObjectNode judged(BatchTable.Waiting waiting, Range range) {
    JsonNode document = tree(waiting.document());
    String name = document.path("name").asText();
    try {
      Job job = JobForm.read(document, range);
      return BatchJson.of(waiting.row(), name, job, Ranking.of(range, job));
    } catch (Refusal refusal) {
      return BatchJson.refused(waiting.row(), name, refusal);
    }
  }

  private static JsonNode tree(String text) {
    return JsonText.read(text.getBytes(StandardCharsets.UTF_8)).tree();
  }
}
