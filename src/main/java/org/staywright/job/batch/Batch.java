package org.staywright.job.batch;

import java.time.Instant;
import org.staywright.job.task.Task;

/**
 * Many jobs judged one after the other.
 *
 * @param id of it, and of its task
 * @param name as its sender gave it
 * @param state where it stands
 * @param total jobs
 * @param tally of what came of those that are done
 */
public record Batch(
    String id, String name, Instant created, Task.State state, int total, Tally tally) {

  /** Numbers of jobs by verdict. */
  public record Tally(int fits, int near, int none, int refused) {

    public int done() {
      return fits + near + none + refused;
    }
  }
}
