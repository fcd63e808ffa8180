package org.staywright.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.staywright.database.Databases;

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

  @Test
  void isReadableWithoutTheProgram() throws IOException {
    String manifest = Zips.text(backup(), "manifest.json");
    assertTrue(manifest.contains("staywright-backup-1"), manifest);
    String jobs = Zips.text(backup(), "job.jsonl");
    assertEquals(2, jobs.lines().count(), jobs);
    assertTrue(jobs.contains("Lid") && StandardCharsets.UTF_8.newEncoder().canEncode(jobs), jobs);
  }
}
