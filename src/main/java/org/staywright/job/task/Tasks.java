package org.staywright.job.task;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * Long work, one after the other: each uses every core by itself. Few may wait, and what came of
 * them is kept for a while only.
 */
@ApplicationScoped
public class Tasks {

  /** Waiting or running. */
  public static final int MOST_OPEN = 16;

  static final int MOST_KEPT = 100;
  static final Duration KEPT = Duration.ofMinutes(20);

  /** For what runs to hear that it is to stop: a piece of work or so. */
  private static final Duration LAST_WORDS = Duration.ofSeconds(10);

  private final Clock clock;
  private final ExecutorService runner =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "tasks");
            thread.setDaemon(true);
            return thread;
          });

  /** The oldest first. */
  private final Map<String, Task> tasks = new LinkedHashMap<>();

  public Tasks() {
    this(Clock.systemUTC());
  }

  Tasks(Clock clock) {
    this.clock = clock;
  }

  /** Too many wait already. */
  public static final class Busy extends RuntimeException {
    public Busy() {
      super("more than " + MOST_OPEN + " tasks wait");
    }
  }

  /** Starts work under a name of its own. */
  public Task start(Task.Work work) {
    return start(UUID.randomUUID().toString(), work);
  }

  /** The work of that name: as it stands if it is known, started if it is not. */
  public synchronized Task start(String id, Task.Work work) {
    tidy();
    Task known = tasks.get(id);
    if (known != null) {
      return known;
    }
    if (open() >= MOST_OPEN) {
      throw new Busy();
    }
    Task task = new Task(id, work);
    tasks.put(id, task);
    runner.execute(() -> task.run(clock));
    return task;
  }

  /** How many wait or run. */
  public synchronized int open() {
    return (int) tasks.values().stream().filter(task -> !task.state().over()).count();
  }

  public synchronized Optional<Task> find(String id) {
    tidy();
    return Optional.ofNullable(tasks.get(id));
  }

  /** Stops it; what is over already is forgotten. */
  public synchronized void stop(String id) {
    Task task = tasks.get(id);
    if (task != null && task.state().over()) {
      tasks.remove(id);
    } else if (task != null) {
      task.stop(clock.instant());
    }
  }

  /** Stops it and forgets it. */
  public synchronized void forget(String id) {
    Task task = tasks.remove(id);
    if (task != null) {
      task.stop(clock.instant());
    }
  }

  private void tidy() {
    Instant old = clock.instant().minus(KEPT);
    tasks.values().removeIf(task -> task.state().over() && task.ended().isBefore(old));
    int many = tasks.size() - MOST_KEPT;
    if (many > 0) {
      tasks.values().stream()
          .filter(task -> task.state().over())
          .limit(many)
          .map(Task::id)
          .toList()
          .forEach(tasks::remove);
    }
  }

  /** Stops all, and waits for what runs: else it might yet take up what is given back. */
  @PreDestroy
  public void close() {
    synchronized (this) {
      tasks.values().forEach(task -> task.stop(clock.instant()));
    }
    runner.shutdownNow();
    try {
      runner.awaitTermination(LAST_WORDS.toSeconds(), TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
