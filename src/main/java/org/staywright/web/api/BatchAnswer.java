package org.staywright.web.api;

import java.time.Instant;
import org.staywright.job.batch.Batch;
import org.staywright.job.task.Task;

/**
 * How far many jobs are, and how many of them came to what.
 *
 * @param results where they stand, as they come
 */
public record BatchAnswer(
    String id,
    String name,
    Instant created,
    Task.State state,
    int done,
    int total,
    int fits,
    int near,
    int none,
    int refused,
    String results) {

  static BatchAnswer of(Batch batch) {
    Batch.Tally tally = batch.tally();
    return new BatchAnswer(
        batch.id(),
        batch.name(),
        batch.created(),
        batch.state(),
        tally.done(),
        batch.total(),
        tally.fits(),
        tally.near(),
        tally.none(),
        tally.refused(),
        "/api/v1/batches/" + batch.id() + "/results.json");
  }
}
