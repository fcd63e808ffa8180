package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DataFolderTest {

  @TempDir Path folder;

  @Test
  void createsTheFolderAndNamesItInFull() {
    Path wanted = folder.resolve("a/b c");
    assertEquals(wanted.toAbsolutePath(), DataFolder.prepare(wanted.toString()).path());
    assertTrue(Files.isDirectory(wanted));
    assertTrue(DataFolder.prepare("target").path().isAbsolute());
  }

  @Test
  void refusesAFileInItsPlace() throws IOException {
    Path file = Files.createFile(folder.resolve("file"));
    assertTrue(refusal(file.toString()).contains(file + " cannot be created or written"));
    assertTrue(refusal(file.resolve("below").toString()).contains("cannot be created or written"));
  }

  @Test
  void refusesNamesTheDatabaseCannotTake() {
    for (String name : new String[] {"a;b", "a${b}", "a\u0000b", "a\nb"}) {
      assertTrue(refusal(folder + "/" + name).contains("sign that the database cannot take"));
    }
  }

  @Test
  void refusesAFolderInUseByAnotherProcess() throws IOException, InterruptedException {
    Path file = folder.resolve("staywright.mv.db");
    Files.createFile(file);
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                Path.of("target", "test-classes").toString(),
                HoldsALock.class.getName(),
                file.toString())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    try {
      // One byte: the lock is held.
      assertEquals('!', other.getInputStream().read());
      assertTrue(refusal(folder.toString()).contains("in use by another Staywright"));
    } finally {
      other.destroy();
      other.waitFor();
    }
    assertEquals(folder.toAbsolutePath(), DataFolder.prepare(folder.toString()).path());
  }

  private static String refusal(String name) {
    return assertThrows(CannotStart.class, () -> DataFolder.prepare(name)).getMessage();
  }
}
