package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.stock.StockColumn;
import org.staywright.part.Family;
import org.staywright.stock.intake.ImportBench;
import org.staywright.stock.intake.Imports;
import org.staywright.stock.intake.Inbox;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class SampleFileTest extends ImportBench {

  @Test
  void comesInWithoutFaultsAsCsv() {
    comesIn(SampleFile.csv().getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void comesInWithoutFaultsAsAWorkbook() {
    comesIn(SampleFile.workbook());
  }

  private void comesIn(byte[] file) {
    Inbox.Kept kept = inbox.take(new ByteArrayInputStream(file), "sample");
    Imports.Outcome outcome = imports.write(ANNA, kept, UPDATE, UNSEEN);
    assertEquals(List.of(), outcome.checked().faults());
    // One for each family, a gas spring with little, and an end fitting.
    assertEquals(Family.values().length + 2, outcome.checked().change().added());
    var little = current.get().part("EXAMPLE-1").orElseThrow();
    assertTrue(little.derived().contains("gasVolumeMl"));
    assertEquals(List.of(), current.get().part("EXAMPLE-2").orElseThrow().derived());
  }

  @Test
  void namesEveryColumn() {
    String header = SampleFile.csv().lines().findFirst().orElseThrow();
    assertEquals(
        StockColumn.ALL.stream().map(StockColumn::name).toList(), List.of(header.split(",")));
  }
}
