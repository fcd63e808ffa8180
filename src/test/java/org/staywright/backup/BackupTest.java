package org.staywright.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.staywright.database.Databases;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

class BackupTest {

  @TempDir Path folder;
  private Filled filled;

  DataSource database() {
    return Databases.h2();
  }

  /** Where a backup is taken to. */
  DataSource elsewhere() {
    return Databases.h2();
  }

  @BeforeEach
  void fill() {
    filled = new Filled(database());
  }

  private Path backup() throws IOException {
    Path file = Files.createTempFile(folder, "backup", ".zip");
    try (var out = Files.newOutputStream(file)) {
      new Backup(filled.database()).write(out);
    }
    return file;
  }

  @Test
  void holdsEveryTableThereIsButThoseOfAccountsAndTheAudit() {
    Set<String> known = new TreeSet<>(StoredTable.NAMES);
    known.addAll(StoredTable.LEFT_OUT);
    assertEquals(known, filled.tables());
  }

  @Test
  void putsBackWhatWasThere() throws IOException {
    List<String> before = filled.dump();
    Path file = backup();
    filled.change();
    new Restoration(filled.database()).restore(ANNA, file);
    assertEquals(before, filled.dump());
  }

  @Test
  void isTakenElsewhere() throws IOException {
    Filled other = new Filled(elsewhere());
    other.change();
    Contents there = new Restoration(other.database()).restore(ANNA, backup());
    assertEquals(filled.dump(), other.dump());
    assertEquals(there.rows(), new Backup(other.database()).contents().rows());
  }

  @Test
  void nothingRestoredIsTakenForWhatSomeoneRemembers() throws IOException {
    Path file = backup();
    filled.change();
    int revision = filled.newest();
    long version = filled.number("select max(version) from job");
    long job = filled.number("select max(id) from job");
    new Restoration(filled.database()).restore(ANNA, file);
    assertEquals(revision + 1, filled.newest());
    assertTrue(filled.number("select min(version) from job") > version);
    filled.addJob("after");
    assertTrue(filled.number("select max(id) from job") > job);
  }

  @Test
  void numbersNewJobsBeyondThoseThatWereRestored() throws IOException {
    for (int i = 0; i < 5; i++) {
      filled.addJob("more " + i);
    }
    Filled other = new Filled(elsewhere());
    new Restoration(other.database()).restore(ANNA, backup());
    other.addJob("after");
    assertEquals(
        filled.number("select max(id) from job") + 1, other.number("select max(id) from job"));
  }

  @Test
  void isOneStateWhileOthersWrite() throws Exception {
    long more =
        filled.number("select count(*) from stock_revision")
            - filled.number("select count(*) from job");
    AtomicBoolean enough = new AtomicBoolean();
    CompletableFuture<Void> writer =
        CompletableFuture.runAsync(
            () -> {
              while (!enough.get()) {
                // A revision and a job at once: a state has as many of the one as of the other.
                filled.addRevisionAndJob();
              }
            });
    Set<Long> seen = new TreeSet<>();
    try {
      // A dozen states, however slowly they come; the writer ends of itself only if it fails.
      while (seen.size() < 12 && !writer.isDone()) {
        Contents held = new Restoration(filled.database()).check(backup());
        long jobs = held.rows().get("job");
        assertEquals(more, held.rows().get("stock_revision") - jobs, held.toString());
        seen.add(jobs);
      }
    } finally {
      enough.set(true);
      writer.join();
    }
  }

  private void assertRefused(String code, Path file) {
    List<String> before = filled.dump();
    Restoration restoration = new Restoration(filled.database());
    Refusal refusal = assertThrows(Refusal.class, () -> restoration.restore(ANNA, file));
    Fault fault = refusal.faults().get(0);
    assertEquals(code, fault.code(), fault.toString());
    assertEquals(before, filled.dump());
  }

  @Test
  void refusesWhatDidNotComeWhole() throws IOException {
    byte[] whole = Files.readAllBytes(backup());
    for (int length : new int[] {0, 1, 1000, whole.length / 2, whole.length - 1}) {
      assertRefused(
          "backup-not-whole",
          Files.write(folder.resolve("part.zip"), Arrays.copyOf(whole, length)));
    }
  }

  @Test
  void refusesAFileThatWasDamaged() throws IOException {
    byte[] damaged = Files.readAllBytes(backup());
    // In the middle of the parts, by far the longest of its entries.
    damaged[damaged.length / 2] ^= 0x10;
    Path file = Files.write(folder.resolve("damaged.zip"), damaged);
    List<String> before = filled.dump();
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
    assertRefused(code, Zips.changed(backup(), entry, change));
  }

  @Test
  void refusesWhatLacksATableOrHasMore() throws IOException {
    assertRefused("backup-of-other-tables", Zips.without(backup(), "job.jsonl"));
    assertRefused("backup-of-other-tables", Zips.with(backup(), "more.jsonl", "[]"));
    assertRefused("not-a-backup", Zips.without(backup(), "manifest.json"));
    Path text = Files.writeString(folder.resolve("text"), "part_number,family\n");
    assertRefused("backup-not-whole", text);
  }

  @Test
  void refusesWhatUnpacksBeyondAllReason() throws IOException {
    String spaces = " ".repeat(1 << 20);
    assertRefused(
        "backup-bomb", Zips.changed(backup(), "sample_jobs.jsonl", text -> spaces.repeat(60)));
  }

  @Test
  void leavesAllAsItIsWhileSomeoneMakesARevision() throws IOException, SQLException {
    Path file = backup();
    try (var connection = filled.database().getConnection()) {
      connection.setAutoCommit(false);
      Restoration.hold(connection);
      if (filled.waitsForEver()) {
        return;
      }
      assertRefused("backup-while-writing", file);
    }
  }

  @Test
  void isReadableWithoutTheProgram() throws IOException {
    String manifest = Zips.text(backup(), "manifest.json");
    assertTrue(manifest.contains("staywright-backup-1"), manifest);
    String jobs = Zips.text(backup(), "job.jsonl");
    assertEquals(2, jobs.lines().count(), jobs);
    assertTrue(jobs.contains("Lid") && StandardCharsets.UTF_8.newEncoder().canEncode(jobs), jobs);
  }
}
