package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class EmptyStockTest {

  @Inject CurrentRange current;

  @Test
  void theProgramStartsWithNothingInStock() {
    assertEquals(0, current.get().size());
  }
}
