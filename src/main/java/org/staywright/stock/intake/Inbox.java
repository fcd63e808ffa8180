package org.staywright.stock.intake;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.staywright.form.table.RowFault;
import org.staywright.form.table.Spoiled;
import org.staywright.form.table.TableFile;

/**
 * Files that came in and the lists of their faults. They lie on the disk until they are old, too
 * many or too long together, and no longer than the program runs.
 */
@ApplicationScoped
public class Inbox {

  static final int MOST = 20;
  static final long LONGEST = 2 * TableFile.LONGEST;
  static final Duration KEPT = Duration.ofHours(2);

  /**
   * A file that came in.
   *
   * @param id of the file, and of the list of its faults; nobody can guess it
   * @param name that its sender gave it
   * @param file null where it was refused as it came
   * @param spoiled why it was refused, null where it was not
   * @param came when
   */
  public record Kept(String id, String name, TableFile file, RowFault spoiled, Instant came) {}

  private final Clock clock;

  /** The oldest first. */
  private final Map<String, Kept> kept = new LinkedHashMap<>();

  private Path folder;

  public Inbox() {
    this(Clock.systemUTC());
  }

  Inbox(Clock clock) {
    this.clock = clock;
  }

  /** Takes a file in, to be read as often as need be. */
  public Kept take(InputStream body, String name) {
    String id = UUID.randomUUID().toString();
    Kept file;
    try {
      TableFile taken = TableFile.take(body, path(id));
      file = new Kept(id, name, taken, null, clock.instant());
    } catch (Spoiled spoiled) {
      file = new Kept(id, name, null, spoiled.fault(), clock.instant());
    } catch (IOException e) {
      delete(path(id));
      throw new UncheckedIOException("the file did not come whole", e);
    }
    synchronized (this) {
      kept.put(id, file);
      tidy();
    }
    return file;
  }

  public synchronized Optional<Kept> find(String id) {
    tidy();
    return Optional.ofNullable(kept.get(id));
  }

  /** All faults of a file as CSV, where it has been checked and had any. */
  public Optional<Path> faults(String id) {
    return find(id).map(file -> faultFile(file.id())).filter(Files::exists);
  }

  /** Where the faults of a file are to be written. */
  Path faultFile(String id) {
    return path(id + ".faults.csv");
  }

  /** The newest file stays in any case. */
  private void tidy() {
    Instant old = clock.instant().minus(KEPT);
    for (String id : new ArrayList<>(kept.keySet())) {
      boolean many = kept.size() > MOST || kept.size() > 1 && length() > LONGEST;
      if (many || kept.get(id).came().isBefore(old)) {
        kept.remove(id);
        delete(path(id));
        delete(faultFile(id));
      }
    }
  }

  private long length() {
    return kept.keySet().stream()
        .flatMap(id -> List.of(path(id), faultFile(id)).stream())
        .mapToLong(path -> path.toFile().length())
        .sum();
  }

  private synchronized Path path(String name) {
    try {
      if (folder == null) {
        folder = Files.createTempDirectory("staywright-imports");
      }
      return folder.resolve(name);
    } catch (IOException e) {
      throw new UncheckedIOException("no folder for files that come in", e);
    }
  }

  static void delete(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot delete " + path, e);
    }
  }

  @PreDestroy
  synchronized void close() throws IOException {
    if (folder != null) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
        files.forEach(Inbox::delete);
      }
      delete(folder);
      folder = null;
    }
  }
}
