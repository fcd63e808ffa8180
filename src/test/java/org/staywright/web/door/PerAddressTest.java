package org.staywright.web.door;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.bucket4j.TimeMeter;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class PerAddressTest {

  private static final String HERE = "192.0.2.1";

  /** Stands still until it is told to go on. */
  private static final class Clock implements TimeMeter {

    private long nanos;

    void goOn(Duration time) {
      nanos += time.toNanos();
    }

    @Override
    public long currentTimeNanos() {
      return nanos;
    }

    @Override
    public boolean isWallClockBased() {
      return false;
    }
  }

  private final Clock clock = new Clock();

  @Test
  void givesSoManyAMinuteAndSaysWhenThereIsOneMore() {
    PerAddress limit = new PerAddress(6, clock);
    for (int each = 0; each < 6; each++) {
      assertEquals(0, limit.wait(HERE));
    }
    long wait = limit.wait(HERE);
    assertTrue(wait >= 10 && wait <= 11, () -> "one comes every ten seconds, not after " + wait);
    clock.goOn(Duration.ofSeconds(wait));
    assertEquals(0, limit.wait(HERE));
    assertTrue(limit.wait(HERE) > 0);
    clock.goOn(Duration.ofHours(1));
    for (int each = 0; each < 6; each++) {
      assertEquals(0, limit.wait(HERE));
    }
    assertTrue(limit.wait(HERE) > 0, "no more are saved up than a minute's");
  }

  @Test
  void countsEachAddressForItself() {
    PerAddress limit = new PerAddress(1, clock);
    assertEquals(0, limit.wait(HERE));
    assertEquals(0, limit.wait("192.0.2.2"));
    assertTrue(limit.wait(HERE) > 0);
  }

  /** Who has one address of the sixth version has 2⁶⁴ of them. */
  @Test
  void takesANetworkOfTheSixthVersionForOne() {
    PerAddress limit = new PerAddress(1, clock);
    assertEquals(0, limit.wait("2001:db8:0:1::1"));
    assertTrue(limit.wait("2001:db8::1:8000:0:0:2") > 0);
    assertEquals(0, limit.wait("2001:db8:0:2::1"));
    assertEquals(2, limit.known());
  }

  @Test
  void remembersNoMoreThanItHasRoomForAndForgetsWhoWasSilentLongest() {
    PerAddress limit = new PerAddress(1, clock);
    limit.wait(HERE);
    limit.wait("192.0.2.2");
    assertTrue(limit.wait(HERE) > 0);
    for (int each = 0; each < PerAddress.MOST - 1; each++) {
      limit.wait("10.0." + each / 256 + "." + each % 256);
    }
    assertEquals(PerAddress.MOST, limit.known());
    assertTrue(limit.wait(HERE) > 0, "who asked after it was forgotten");
    assertEquals(0, limit.wait("192.0.2.2"));
  }
}
