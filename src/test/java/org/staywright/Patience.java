package org.staywright;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Waits for what comes by itself: looks again and again, for as long as a busy machine may need.
 */
public final class Patience {

  private static final Duration PAUSE = Duration.ofMillis(10);
  private static final Duration LONGEST = Duration.ofMinutes(2);

  private Patience() {}

  public static void until(BooleanSupplier what) throws InterruptedException {
    until(what::getAsBoolean, is -> is);
  }

  /**
   * @return what was seen at last
   */
  public static <T> T until(Supplier<T> look, Predicate<T> enough) throws InterruptedException {
    long end = System.nanoTime() + LONGEST.toNanos();
    T seen = look.get();
    while (!enough.test(seen)) {
      if (System.nanoTime() > end) {
        throw new AssertionError("waited " + LONGEST.toMinutes() + " minutes, and still: " + seen);
      }
      Thread.sleep(PAUSE.toMillis());
      seen = look.get();
    }
    return seen;
  }
}
