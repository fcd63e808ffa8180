package org.staywright.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.staywright.database.Somebody.ANNA;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.database.Databases;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** What is refused changes nothing, so that one database and one backup of it serve all cases. */
@TestInstance(Lifecycle.PER_CLASS)
class BackupRefusalTest {

  private Path folder;
  private Filled filled;
  private List<String> before;
  private Path backup;

  DataSource database() {
    return Databases.h2();
  }

  @BeforeAll
  void fill(@TempDir Path folder) throws IOException {
    this.folder = folder;
    filled = new Filled(database());
    before = filled.dump();
    backup = folder.resolve("backup.zip");
    try (var out = Files.newOutputStream(backup)) {
      new Backup(filled.database()).write(out);
    }
  }

  /** To be changed. */
  private Path copy() throws IOException {
    return Files.copy(backup, folder.resolve("copy.zip"), StandardCopyOption.REPLACE_EXISTING);
  }

  private void assertRefused(String code, Path file) {
    Restoration restoration = new Restoration(filled.database());
    Refusal refusal = assertThrows(Refusal.class, () -> restoration.restore(ANNA, file));
    Fault fault = refusal.faults().get(0);
    assertEquals(code, fault.code(), fault.toString());
    assertEquals(before, filled.dump());
  }

  @Test
  void refusesWhatDidNotComeWhole() throws IOException {
    byte[] whole = Files.readAllBytes(backup);
    for (int length : new int[] {0, 1, 1000, whole.length / 2, whole.length - 1}) {
      assertRefused(
          "backup-not-whole",
          Files.write(folder.resolve("part.zip"), Arrays.copyOf(whole, length)));
    }
  }

  @Test
  void refusesAFileThatWasDamaged() throws IOException {
    byte[] damaged = Files.readAllBytes(backup);
    // In the middle of the parts, by far the longest of its entries.
    damaged[damaged.length / 2] ^= 0x10;
    Path file = Files.write(folder.resolve("damaged.zip"), damaged);
    assertThrows(Refusal.class, () -> new Restoration(filled.database()).restore(ANNA, file));
    assertEquals(before, filled.dump());
  }

  /** Entry, what is looked for in it, what takes its place, and why that is refused. */
  @ParameterizedTest
  @CsvSource({
    "manifest.json, staywright-backup-1, staywright-backup-9, not-a-backup",
    "manifest.json, '\"schema\" : \"', '\"schema\" : \"0.', backup-of-other-version",
    "manifest.json, '\"stroke_mm\"', '\"stroke_inch\"', backup-of-other-tables",
    "manifest.json, '\"rows\" : ', '\"rows\" : 1', backup-with-other-rows",
    "job.jsonl, '[', '[[', backup-with-other-values",
    "job.jsonl, '[', '{', backup-not-rows",
    "job.jsonl, '[', '[\"', backup-with-other-values",
    "stock_revision.jsonl, '[1,', '[1.5,', backup-with-other-values",
    "stock_revision.jsonl, '[1,', '[99999999999999999999,', backup-with-other-values",
    "stock_revision.jsonl, '[2,', '[1,', backup-contradicts-itself",
    "stock_revision.jsonl, '[1,', '[7,', backup-contradicts-itself",
    "stock_revision.jsonl, '[1,', '[null,', backup-contradicts-itself",
    "stock_revision.jsonl, '[1,\"', '[1,\"9', backup-with-other-values",
    "part.jsonl, gas-spring, gas-sprung, backup-contradicts-itself",
  })
  void refusesWhatWasChanged(String entry, String old, String fresh, String code)
      throws IOException {
    UnaryOperator<String> change = text -> text.replaceFirst(Pattern.quote(old), fresh);
    assertRefused(code, Zips.changed(copy(), entry, change));
  }

  @Test
  void refusesWhatLacksATableOrHasMore() throws IOException {
    assertRefused("backup-of-other-tables", Zips.without(copy(), "job.jsonl"));
    assertRefused("backup-of-other-tables", Zips.with(copy(), "more.jsonl", "[]"));
    assertRefused("not-a-backup", Zips.without(copy(), "manifest.json"));
    Path text = Files.writeString(folder.resolve("text"), "part_number,family\n");
    assertRefused("backup-not-whole", text);
  }

  @Test
  void refusesWhatUnpacksBeyondAllReason() throws IOException {
    String spaces = " ".repeat(1 << 20);
    assertRefused(
        "backup-bomb", Zips.changed(copy(), "sample_jobs.jsonl", text -> spaces.repeat(60)));
  }

  @Test
  void leavesAllAsItIsWhileSomeoneMakesARevision() throws SQLException {
    try (var connection = filled.database().getConnection()) {
      connection.setAutoCommit(false);
      Restoration.hold(connection);
      if (filled.waitsForEver()) {
        return;
      }
      assertRefused("backup-while-writing", backup);
    }
  }
}
