package org.staywright.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.backup.Emptied;
import org.staywright.form.part.FittingRow;
import org.staywright.form.table.RowFile;
import org.staywright.part.Family;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class StockTest {

  private static List<Part> parts;
  private static List<Fitting> fittings;

  @Inject Stock stock;
  @Inject DataSource database;

  @BeforeEach
  void empty() {
    Emptied.all(database);
  }

  @BeforeAll
  static void readTheSampleRange() throws IOException {
    parts = new ArrayList<>();
    for (Family family : Family.values()) {
      parts.addAll(org.staywright.fit.SampleRange.parts(family));
    }
    var fittingFile = Files.newBufferedReader(Path.of("catalog-data", "fittings.csv"));
    fittings = RowFile.read(fittingFile, FittingRow.COLUMNS, FittingRow::read).rows();
  }

  @Test
  void theRangeIsWhatTheFilesHold() {
    new SampleRange(stock, true).loadIfFirst();
    assertSampleRange(new CurrentRange(stock).get());
  }

  @Test
  void survivesARestart() throws SQLException {
    new SampleRange(stock, true).loadIfFirst();
    restart();
    new SampleRange(stock, true).loadIfFirst();
    assertEquals(1, stock.newest());
    assertSampleRange(new CurrentRange(stock).get());
  }

  /** Every connection is lost, and the next one opens the file anew. */
  void restart() throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("shutdown");
    }
  }

  @Test
  void loadsSamplesOnlyIntoAnEmptyStock() {
    assertEquals(Optional.of(1), stock.begin("own", parts.subList(0, 1), List.of()));
    new SampleRange(stock, true).loadIfFirst();
    assertEquals(1, new CurrentRange(stock).get().size());
    assertEquals(Optional.empty(), stock.begin("again", parts, fittings));
  }

  @Test
  void anEmptyRangeIsARange() {
    new SampleRange(stock, false).loadIfFirst();
    Range range = new CurrentRange(stock).get();
    assertEquals(0, range.revision());
    assertEquals(0, range.size());
    assertEquals(List.of(), range.fittings());
    assertTrue(range.part("23K-YQ9").isEmpty());
  }

  @Test
  void buildsTheRangeOnceForEachRevision() {
    CurrentRange current = new CurrentRange(stock);
    Range none = current.get();
    assertSame(none, current.get());
    stock.begin("own", parts, fittings);
    Range first = current.get();
    assertEquals(1, first.revision());
    assertSame(first, current.get());
  }

  @Test
  void findsAPartAsItStoodInARevision() {
    stock.begin("own", parts, fittings);
    Part part = parts.get(17);
    Fitting fitting = fittings.get(17);
    assertEquals(Optional.of(part), stock.part(part.number(), 1));
    assertEquals(Optional.of(fitting), stock.fitting(fitting.number(), 1));
    assertEquals(Optional.empty(), stock.part(part.number(), 0));
    assertEquals(Optional.empty(), stock.part("NO-SUCH", 1));
    assertEquals(Optional.empty(), stock.fitting(part.number(), 1));
  }

  @Test
  void keepsNothingOfALoadThatFails() {
    List<Part> twice = List.of(parts.get(0), parts.get(1), parts.get(0));
    assertThrows(IllegalStateException.class, () -> stock.begin("own", twice, fittings));
    assertEquals(0, stock.newest());
    assertEquals(0, new CurrentRange(stock).get().size());
  }

  private static void assertSampleRange(Range range) {
    assertEquals(1, range.revision());
    List<Part> sorted =
        parts.stream().sorted((one, other) -> one.number().compareTo(other.number())).toList();
    assertEquals(sorted, IntStream.range(0, range.size()).mapToObj(range::part).toList());
    assertEquals(
        fittings.stream().sorted((a, b) -> a.number().compareTo(b.number())).toList(),
        range.fittings());
  }
}
