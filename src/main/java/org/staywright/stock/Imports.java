package org.staywright.stock;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.staywright.form.RowFault;
import org.staywright.part.Range;

/**
 * Files that came in, the checks of them, and the revisions made of them. The newest few files and
 * lists of faults are kept on the disk until the program ends.
 */
@ApplicationScoped
public class Imports {

  private static final int KEPT = 20;

  /** Who waits: told how many rows are read, and says whether to go on. */
  @FunctionalInterface
  public interface Watch {
    boolean goOn(int done, int total);
  }

  /**
   * A file that came in.
   *
   * @param id of the file, and of the list of its faults
   * @param name that its sender gave it
   * @param file null where it was refused as it came
   * @param spoiled why it was refused, null where it was not
   */
  public record Kept(String id, String name, StockFile file, RowFault spoiled) {}

  /**
   * What came of a file.
   *
   * @param revision made of it, 0 for none
   */
  public record Outcome(String id, int revision, Checked checked) {}

  private final Stock stock;
  private final CurrentRange current;
  private final Map<String, Kept> kept = new LinkedHashMap<>();
  private Path folder;

  public Imports(Stock stock, CurrentRange current) {
    this.stock = stock;
    this.current = current;
  }

  /** Takes a file in, to be read as often as need be. */
  public Kept take(InputStream body, String name) {
    String id = UUID.randomUUID().toString();
    Kept file;
    try {
      file = new Kept(id, name, StockFile.take(body, folder().resolve(id)), null);
    } catch (Spoiled spoiled) {
      file = new Kept(id, name, null, spoiled.fault());
    } catch (IOException e) {
      throw new UncheckedIOException("the file did not come whole", e);
    }
    keep(file);
    return file;
  }

  public synchronized Optional<Kept> find(String id) {
    return Optional.ofNullable(kept.get(id));
  }

  /** All faults of a file as CSV, where it has been checked and had any. */
  public Optional<Path> faults(String id) {
    return find(id).map(file -> faultFile(file.id())).filter(Files::exists);
  }

  /** Reads a file against the range and changes nothing. */
  public Outcome check(Kept file, ImportOptions options, Watch watch) {
    return new Outcome(file.id(), 0, checked(file, options, watch, current.get()));
  }

  /** Makes a revision of a file that has no fault; else changes nothing. */
  public synchronized Outcome write(Kept file, ImportOptions options, Watch watch) {
    Range range = current.get();
    Watch firstHalf = (done, total) -> watch.goOn(done, 2 * total);
    Checked checked = checked(file, options, firstHalf, range);
    if (!checked.clean()) {
      return new Outcome(file.id(), 0, checked);
    }
    int rows = checked.rows();
    Watch secondHalf = (done, total) -> watch.goOn(rows + done, 2 * rows);
    int revision =
        stock.revise(
            range.revision(),
            file.name(),
            changing -> {
              try (FaultList none = new FaultList(faultFile(file.id()))) {
                Import writing =
                    new Import(file.file(), options, range, sink(changing), none, secondHalf::goOn);
                if (!writing.run(rows).clean()) {
                  throw new IllegalStateException("the file changed while it was read");
                }
              }
            });
    return new Outcome(file.id(), revision, checked);
  }

  private Checked checked(Kept file, ImportOptions options, Watch watch, Range range) {
    delete(faultFile(file.id()));
    try (FaultList faults = new FaultList(faultFile(file.id()))) {
      if (file.spoiled() != null) {
        faults.add(file.spoiled().row(), file.spoiled().fault());
        return new Checked(
            range.revision(),
            0,
            0,
            1,
            faults.first(),
            faults.file(),
            List.of(),
            List.of(),
            Map.of(),
            Checked.Change.NONE);
      }
      return new Import(file.file(), options, range, Import.Sink.NOTHING, faults, watch::goOn)
          .run(0);
    } catch (IOException e) {
      throw new UncheckedIOException("the file cannot be read", e);
    }
  }

  private static Import.Sink sink(Stock.Changing changing) {
    return new Import.Sink() {
      @Override
      public void change(org.staywright.form.StockRow row, boolean known) {
        changing.put(row, known);
      }

      @Override
      public void gone(String number, boolean fitting) {
        changing.gone(number, fitting);
      }
    };
  }

  private Path faultFile(String id) {
    return folder().resolve(id + ".faults.csv");
  }

  private synchronized void keep(Kept file) {
    kept.put(file.id(), file);
    List<String> old = new ArrayList<>(kept.keySet());
    for (String id : old.subList(0, Math.max(0, old.size() - KEPT))) {
      kept.remove(id);
      delete(folder().resolve(id));
      delete(faultFile(id));
    }
  }

  private synchronized Path folder() {
    try {
      if (folder == null) {
        folder = Files.createTempDirectory("staywright-imports");
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException("no folder for files that come in", e);
    }
  }

  private static void delete(Path path) {
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
        files.forEach(Imports::delete);
      }
      delete(folder);
    }
  }
}
