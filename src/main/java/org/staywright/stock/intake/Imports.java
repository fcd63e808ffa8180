package org.staywright.stock.intake;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.staywright.database.Author;
import org.staywright.form.stock.StockRow;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.Stock;

/** Files of stock checked against the range, and revisions made of them. */
@ApplicationScoped
public class Imports {

  /** Who waits: told how many rows are read, and says whether to go on. */
  @FunctionalInterface
  public interface Watch {
    boolean goOn(int done, int total);
  }

  /**
   * What came of a file.
   *
   * @param revision made of it, 0 for none
   */
  public record Outcome(String id, int revision, Checked checked) {}

  private final Stock stock;
  private final CurrentRange current;
  private final Inbox inbox;

  public Imports(Stock stock, CurrentRange current, Inbox inbox) {
    this.stock = stock;
    this.current = current;
    this.inbox = inbox;
  }

  /** Reads a file against the range and changes nothing. */
  public Outcome check(Inbox.Kept file, ImportOptions options, Watch watch) {
    return new Outcome(file.id(), 0, checked(file, options, watch, current.get()));
  }

  /** Makes a revision of a file that has no fault; else changes nothing. */
  public synchronized Outcome write(
      Author author, Inbox.Kept file, ImportOptions options, Watch watch) {
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
            author,
            range.revision(),
            file.name(),
            changing -> {
              try (FaultList none = new FaultList(inbox.faultFile(file.id()))) {
                Import writing =
                    new Import(file.file(), options, range, sink(changing), none, secondHalf::goOn);
                if (!writing.run(rows).clean()) {
                  throw new IllegalStateException("the file changed while it was read");
                }
              }
            });
    return new Outcome(file.id(), revision, checked);
  }

  private Checked checked(Inbox.Kept file, ImportOptions options, Watch watch, Range range) {
    Inbox.delete(inbox.faultFile(file.id()));
    try (FaultList faults = new FaultList(inbox.faultFile(file.id()))) {
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
          .run(file.file().lines());
    } catch (IOException e) {
      throw new UncheckedIOException("the file cannot be read", e);
    }
  }

  private static Import.Sink sink(Stock.Changing changing) {
    return new Import.Sink() {
      @Override
      public void change(StockRow row, boolean known) {
        changing.put(row, known);
      }

      @Override
      public void gone(String number, boolean fitting) {
        changing.gone(number, fitting);
      }
    };
  }
}
