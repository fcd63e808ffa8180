package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.part.Column;
import org.staywright.part.Range;

@QuarkusTest
@Tag("server")
class CurrentRangeTest {

  @Inject Stock stock;

  @Test
  void theProgramStartsWithTheSampleRange() {
    Range range = stock.range(1);
    assertTrue(range.size() >= 2500, range.size() + " parts");
    assertTrue(range.fittings().size() >= 60);
    assertEquals(range.size(), range.column(Column.GAS_MASS).length);
  }
}
