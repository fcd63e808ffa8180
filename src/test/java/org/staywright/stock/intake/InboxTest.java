package org.staywright.stock.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class InboxTest {

  private Instant now = Instant.parse("2026-11-29T08:00:00Z");

  private final Inbox inbox =
      new Inbox(
          new Clock() {
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
          });

  @AfterEach
  void close() throws IOException {
    inbox.close();
  }

  @Test
  void forgetsAFileOnceItIsOld() {
    Inbox.Kept file = take();
    now = now.plus(Inbox.KEPT);
    assertTrue(inbox.find(file.id()).isPresent());
    now = now.plusSeconds(1);
    assertTrue(inbox.find(file.id()).isEmpty());
    assertFalse(Files.exists(file.file().path()));
  }

  @Test
  void keepsTheNewestFew() {
    List<Inbox.Kept> files = new ArrayList<>();
    for (int i = 0; i < Inbox.MOST + 3; i++) {
      files.add(take());
    }
    assertTrue(inbox.find(files.get(2).id()).isEmpty());
    assertFalse(Files.exists(files.get(2).file().path()));
    assertTrue(inbox.find(files.get(3).id()).isPresent());
  }

  @Test
  void leavesNothingBehind() throws IOException {
    Inbox.Kept file = take();
    inbox.close();
    assertFalse(Files.exists(file.file().path().getParent()));
  }

  @Test
  void knowsHowManyLinesCsvHas() {
    assertEquals(3, take().file().lines());
  }

  private Inbox.Kept take() {
    byte[] bytes = "part_number,family\nA,b\n".getBytes(StandardCharsets.UTF_8);
    return inbox.take(new ByteArrayInputStream(bytes), "a.csv");
  }
}
