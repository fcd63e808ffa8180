package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.backup.Emptied;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class EmptyStockTest {

  @Inject SampleRange samples;
  @Inject Stock stock;
  @Inject DataSource database;

  @Test
  void theProgramStartsWithNothingInStock() {
    // As at its start: tests before this one may have filled it.
    Emptied.all(database);
    samples.onStart(null);
    assertEquals(0, new CurrentRange(stock).get().size());
  }
}
