package org.staywright.job.task;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.staywright.fit.mounts.Progress;

/** Long work in the background: how far it is, and what came of it. */
public final class Task {

  private static final Logger LOG = Logger.getLogger(Task.class);

  /** Where a task stands. */
  public enum State {
    QUEUED,
    RUNNING,
    DONE,
    FAILED,
    STOPPED;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    public boolean over() {
      return compareTo(RUNNING) > 0;
    }
  }

  /**
   * What is to be done; it asks the progress whether to go on, and is stopped by its no. What it
   * has until then may be its answer, or none.
   */
  @FunctionalInterface
  public interface Work {
    Object run(Progress progress);
  }

  private final String id;
  private final Work work;
  private State state = State.QUEUED;
  private boolean stopping;
  private int done;
  private int total;
  private Object result;
  private Instant ended;

  Task(String id, Work work) {
    this.id = id;
    this.work = work;
  }

  public String id() {
    return id;
  }

  public synchronized State state() {
    return state;
  }

  public synchronized int done() {
    return done;
  }

  /** 0 until it is known. */
  public synchronized int total() {
    return total;
  }

  /** Null until it is over, and where it was stopped with nothing to show. */
  public synchronized Object result() {
    return result;
  }

  synchronized Instant ended() {
    return ended;
  }

  /** Waits for its end, but not for ever. */
  public synchronized void await(Duration most) {
    long left = most.toNanos();
    long until = System.nanoTime() + left;
    try {
      while (!state.over() && left > 0) {
        TimeUnit.NANOSECONDS.timedWait(this, left);
        left = until - System.nanoTime();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** At once where it still waits, else as soon as it has heard of it. */
  synchronized void stop(Instant now) {
    stopping = true;
    if (state == State.QUEUED) {
      end(State.STOPPED, null, now);
    }
  }

  void run(Clock clock) {
    synchronized (this) {
      if (state != State.QUEUED) {
        return;
      }
      state = State.RUNNING;
    }
    try {
      Object made = work.run(this::goOn);
      finish(stopping() ? State.STOPPED : State.DONE, made, clock.instant());
    } catch (CancellationException stopped) {
      finish(State.STOPPED, null, clock.instant());
    } catch (RuntimeException unforeseen) {
      LOG.errorf(unforeseen, "task %s failed", id);
      finish(State.FAILED, null, clock.instant());
    }
  }

  private synchronized boolean goOn(int steps, int of) {
    done = Math.max(done, steps);
    total = of;
    return !stopping;
  }

  private synchronized boolean stopping() {
    return stopping;
  }

  private synchronized void finish(State how, Object made, Instant now) {
    done = how == State.DONE ? total : done;
    end(how, made, now);
  }

  private void end(State how, Object made, Instant now) {
    state = how;
    result = made;
    ended = now;
    notifyAll();
  }
}
