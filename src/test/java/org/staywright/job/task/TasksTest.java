package org.staywright.job.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.staywright.Patience;
import org.staywright.fit.mounts.Progress;

class TasksTest {

  /** A clock that is set. */
  private static final class Set extends Clock {
    private Instant now = Instant.parse("2026-11-25T12:00:00Z");

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private final Set clock = new Set();
  private final Tasks tasks = new Tasks(clock);

  @AfterEach
  void letGo() {
    tasks.close();
  }

  @Test
  void keepsWhatCameOfItForAWhile() throws Exception {
    Task task = tasks.start(progress -> progress.goOn(3, 3) ? "made" : "");
    await(task, Task.State.DONE);
    assertEquals("made", task.result());
    assertEquals(3, task.done());
    clock.now = clock.now.plus(Tasks.KEPT).minusSeconds(1);
    assertSame(task, tasks.find(task.id()).orElseThrow());
    clock.now = clock.now.plus(Duration.ofSeconds(2));
    assertTrue(tasks.find(task.id()).isEmpty());
  }

  @Test
  void stopsWhatRunsAndWhatWaits() throws Exception {
    Task running = tasks.start(this::untilStopped);
    Task waiting = tasks.start(progress -> "never");
    await(running, Task.State.RUNNING);
    tasks.stop(waiting.id());
    tasks.stop(running.id());
    assertEquals(Task.State.STOPPED, waiting.state());
    await(running, Task.State.STOPPED);
    Task next = tasks.start(progress -> "after");
    await(next, Task.State.DONE);
  }

  @Test
  void whatWasStoppedKeepsWhatItHadUntilThen() throws Exception {
    Task task =
        tasks.start(
            progress -> {
              while (progress.goOn(1, 2)) {
                Thread.onSpinWait();
              }
              return "half of it";
            });
    await(task, Task.State.RUNNING);
    tasks.stop(task.id());
    await(task, Task.State.STOPPED);
    assertEquals("half of it", task.result());
    assertEquals(1, task.done());
  }

  @Test
  void aFailureIsOneTasksOwn() throws Exception {
    Task failing =
        tasks.start(
            progress -> {
              throw new IllegalStateException("meant to");
            });
    await(failing, Task.State.FAILED);
    await(tasks.start(progress -> 1), Task.State.DONE);
  }

  @Test
  void oneNameOneTask() {
    Task first = tasks.start("same", this::untilStopped);
    assertSame(first, tasks.start("same", progress -> "other"));
    tasks.forget("same");
    assertTrue(tasks.find("same").isEmpty());
  }

  @Test
  void fewMayWait() {
    for (int i = 0; i < Tasks.MOST_OPEN; i++) {
      tasks.start(this::untilStopped);
    }
    assertThrows(Tasks.Busy.class, () -> tasks.start(progress -> 1));
  }

  @Test
  void closesOnlyWhenWhatRanHasEnded() throws Exception {
    Task task =
        tasks.start(
            progress -> {
              while (progress.goOn(1, 2)) {
                Thread.onSpinWait();
              }
              // The last piece of its work.
              long end = System.nanoTime() + 200_000_000;
              while (System.nanoTime() < end) {
                Thread.onSpinWait();
              }
              return "all of it";
            });
    await(task, Task.State.RUNNING);
    tasks.close();
    assertEquals("all of it", task.result());
  }

  private Object untilStopped(Progress progress) {
    while (progress.goOn(1, 2)) {
      Thread.onSpinWait();
    }
    throw new CancellationException();
  }

  private static void await(Task task, Task.State state) throws InterruptedException {
    Patience.until(task::state, state::equals);
  }
}
