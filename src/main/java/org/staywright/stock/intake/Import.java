package org.staywright.stock.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.stock.StockColumn;
import org.staywright.form.stock.StockRow;
import org.staywright.form.table.Rows;
import org.staywright.form.table.Spoiled;
import org.staywright.form.table.TableFile;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.unit.Fault;

/**
 * Reads a file of stock row by row against the range it is to change. A dry run and a write read it
 * in the same way; only what is done with a good row differs.
 *
 * <p>A file replaces what it holds: all parts where it names parts, all fittings where it names
 * fittings. As an update it only adds and changes.
 */
final class Import {

  /** Rows of a file at most. */
  static final int MOST_ROWS = 1_000_000;

  private static final int PREVIEW = 5;

  /** Rows judged before anybody is told how far it is. */
  private static final int PIECE = 1000;

  /** What is done with rows that are right. */
  interface Sink {

    /** For a dry run. */
    Sink NOTHING = (row, known) -> {};

    /**
     * @param known whether the range has another row of that number
     */
    void change(StockRow row, boolean known);

    default void gone(String partNumber, boolean fitting) {}
  }

  /** Who waits: told how far it is, and says whether to go on. */
  public interface Watch {
    boolean goOn(int done, int total);
  }

  private final TableFile file;
  private final ImportOptions options;
  private final Range range;
  private final Sink sink;
  private final FaultList faults;
  private final Watch watch;

  private final SeenNumbers seen = new SeenNumbers();
  private final BitSet parts = new BitSet();
  private final BitSet fittings = new BitSet();
  private final Map<String, Integer> fittingRows = new TreeMap<>();
  private final Map<String, Integer> derived = new TreeMap<>();
  private final List<Checked.Understood> preview = new ArrayList<>();
  private ColumnPlan plan;
  private Spoiled spoiled;
  private boolean anyPart;
  private boolean anyFitting;
  private int rows;
  private int accepted;
  private int added;
  private int changed;
  private int same;
  private int gone;

  Import(
      TableFile file,
      ImportOptions options,
      Range range,
      Sink sink,
      FaultList faults,
      Watch watch) {
    this.file = file;
    this.options = options;
    this.range = range;
    this.sink = sink;
    this.faults = faults;
    this.watch = watch;
    for (int i = 0; i < range.fittings().size(); i++) {
      fittingRows.put(range.fittings().get(i).number(), i);
    }
  }

  /** Reads the file to its end. */
  Checked run(int total) throws IOException {
    try (Rows source = file.rows(StockColumn.DATES)) {
      Rows.Row header = source.header();
      if (header == null) {
        throw new Spoiled(1, null, "part_number, family, …", "empty-file");
      }
      plan = ColumnPlan.of(header.cells(), options.meanings());
      plan.faults().forEach(fault -> faults.add(header.number(), fault));
      // With a wrong header every row would be wrong for the same reason.
      int most = plan.faults().isEmpty() ? PIECE : PREVIEW;
      for (List<Rows.Row> piece = piece(source, most);
          !piece.isEmpty();
          piece = most == PIECE ? piece(source, most) : List.of()) {
        settle(piece);
        if (!watch.goOn(rows, Math.max(total, rows))) {
          throw new CancellationException();
        }
      }
      if (spoiled != null) {
        throw spoiled;
      }
      if (rows == 0) {
        throw new Spoiled(header.number() + 1, null, "≥ 1", "no-rows");
      }
    } catch (Spoiled why) {
      faults.add(why.fault().row(), why.fault().fault());
    }
    if (!options.update()) {
      leave();
    }
    if (!watch.goOn(rows, rows)) {
      throw new CancellationException();
    }
    return checked();
  }

  /** The next rows; where the file cannot be read on, those before that. */
  private List<Rows.Row> piece(Rows source, int most) {
    List<Rows.Row> piece = new ArrayList<>(most);
    try {
      while (spoiled == null && piece.size() < most) {
        Rows.Row row = source.next();
        if (row == null) {
          break;
        }
        if (rows + piece.size() == MOST_ROWS) {
          throw new Spoiled(row.number(), MOST_ROWS + 1, "≤ " + MOST_ROWS, "too-many-rows");
        }
        piece.add(row);
      }
    } catch (Spoiled why) {
      spoiled = why;
    }
    return piece;
  }

  /** Judges rows side by side, each by itself, then holds them against all others in turn. */
  private void settle(List<Rows.Row> piece) {
    rows += piece.size();
    boolean readable = plan.faults().isEmpty();
    List<CheckedRow> judged =
        piece.parallelStream().map(row -> CheckedRow.of(row, plan, options.hysteresis())).toList();
    for (CheckedRow each : judged) {
      if (preview.size() < PREVIEW) {
        preview.add(each.understood(plan));
      }
      if (readable) {
        settle(each);
      }
    }
  }

  private void settle(CheckedRow row) {
    row.faults().forEach(fault -> faults.add(row.number(), fault));
    StockRow sound = row.sound();
    if (sound == null) {
      return;
    }
    int before = seen.put(sound.number(), row.number());
    if (before > 0) {
      String there = Integer.toString(before);
      faults.add(row.number(), about(sound, row, there, "number-twice"));
    } else if (otherKind(sound)) {
      faults.add(row.number(), about(sound, row, "", "other-kind"));
    } else {
      accepted++;
      take(sound);
    }
  }

  private Fault about(StockRow row, CheckedRow judged, String bound, String code) {
    return plan.asInFile(new Fault("part_number", row.number(), bound, code), judged.cells());
  }

  private void take(StockRow row) {
    boolean known;
    boolean alike;
    if (row.part() != null) {
      anyPart = true;
      row.part().derived().forEach(name -> derived.merge(name, 1, Integer::sum));
      OptionalInt place = range.row(row.number());
      known = place.isPresent();
      if (known) {
        parts.set(place.getAsInt());
      }
      alike = known && alike(range.part(place.getAsInt()), row.part());
    } else {
      anyFitting = true;
      Integer place = fittingRows.get(row.number());
      known = place != null;
      if (known) {
        fittings.set(place);
      }
      alike = known && alike(range.fittings().get(place), row.fitting());
    }
    if (alike) {
      same++;
    } else if (known) {
      changed++;
      sink.change(row, true);
    } else {
      added++;
      sink.change(row, false);
    }
  }

  /** A number cannot be a part's and a fitting's at once. */
  private boolean otherKind(StockRow row) {
    return row.part() != null
        ? fittingRows.containsKey(row.number())
        : range.row(row.number()).isPresent();
  }

  private static boolean alike(Part known, Part read) {
    return known.equals(read)
        || new StockRow(known, null).cells().equals(new StockRow(read, null).cells());
  }

  private static boolean alike(Fitting known, Fitting read) {
    return known.equals(read)
        || new StockRow(null, known).cells().equals(new StockRow(null, read).cells());
  }

  /** What the file does not name goes. */
  private void leave() {
    if (anyPart) {
      for (int i = parts.nextClearBit(0); i < range.size(); i = parts.nextClearBit(i + 1)) {
        gone++;
        sink.gone(range.number(i), false);
      }
    }
    if (anyFitting) {
      for (int i = 0; i < range.fittings().size(); i++) {
        if (!fittings.get(i)) {
          gone++;
          sink.gone(range.fittings().get(i).number(), true);
        }
      }
    }
  }

  private Checked checked() {
    return new Checked(
        range.revision(),
        rows,
        accepted,
        faults.count(),
        faults.first(),
        faults.file(),
        plan == null ? List.of() : plan.columns(),
        preview,
        derived,
        faults.count() > 0 ? Checked.Change.NONE : new Checked.Change(added, changed, same, gone));
  }
}
