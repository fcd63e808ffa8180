package org.staywright.web.api;

import org.jspecify.annotations.Nullable;
import org.staywright.job.task.Task;

/**
 * How far long work is.
 *
 * @param done steps
 * @param total steps, 0 until it is known
 * @param result what came of it, null until it is over
 */
public record TaskAnswer(Task.State state, int done, int total, @Nullable Object result) {

  /** What came of work that was begun here: that of a page is no answer. */
  record Made(Object answer) {}

  /** As it stands at one moment: whoever is over shows what came of it. */
  static TaskAnswer of(Task task) {
    synchronized (task) {
      Object result = task.result() instanceof Made made ? made.answer() : null;
      return new TaskAnswer(task.state(), task.done(), task.total(), result);
    }
  }
}
