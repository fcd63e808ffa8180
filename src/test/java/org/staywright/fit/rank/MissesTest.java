package org.staywright.fit.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.assess.Blocker;
import org.staywright.fit.job.Criterion;

class MissesTest {

  private static Blocker miss(double share) {
    return new Blocker(Criterion.HOLD_OPEN, 10, 10 - 10 * share, share);
  }

  @Test
  void countsWhatIsMissedAndKeepsTheLargest() {
    assertSame(Misses.NONE, Misses.of(List.of()));
    assertEquals(new Misses(0, 0), Misses.of(List.of()));
    assertEquals(new Misses(2, 0.3), Misses.of(List.of(miss(0.3), miss(0.1))));
    assertEquals(new Misses(2, 0.5), Misses.of(List.of(miss(0.3)), miss(0.5)));
    assertEquals(new Misses(2, 0.3), Misses.of(List.of(miss(0.3)), miss(0.2)));
    assertEquals(new Misses(1, 0.2), Misses.of(List.of(), miss(0.2)));
  }

  @Test
  void fewerComeFirstThenSmaller() {
    List<Misses> sorted =
        Stream.of(new Misses(2, 0.1), new Misses(1, 0.4), Misses.NONE, new Misses(1, 0.2))
            .sorted()
            .toList();
    assertEquals(
        List.of(Misses.NONE, new Misses(1, 0.2), new Misses(1, 0.4), new Misses(2, 0.1)), sorted);
  }

  @Test
  void whatIsPutOffIsWorkedOutOnceAndOnlyWhenAsked() {
    AtomicInteger asked = new AtomicInteger();
    Once<Integer> once = new Once<>(asked::incrementAndGet);
    assertEquals(0, asked.get());
    assertEquals(1, once.get());
    assertEquals(1, once.get());
  }
}
