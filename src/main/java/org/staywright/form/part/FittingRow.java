package org.staywright.form.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.table.Cells;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Offer;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * An end fitting or bracket as a row of a file or a table: its numbers in the units of their
 * columns.
 *
 * @param number part number
 * @param description null where none was given
 * @param type what it is
 * @param finish surface
 * @param thread null for a clip
 * @param numbers by column
 * @param offer price, stock and lead time
 */
public record FittingRow(
    String number,
    String description,
    FittingType type,
    Finish finish,
    String thread,
    Map<FittingColumn, Double> numbers,
    Offer offer) {

  /** Header of a file of fittings. */
  public static final List<String> COLUMNS = columns();

  private static List<String> columns() {
    List<String> columns = new ArrayList<>();
    columns.addAll(List.of("part_number", "description", "type", "finish", "thread"));
    for (FittingColumn number : FittingColumn.values()) {
      columns.add(number.column());
    }
    columns.addAll(OfferCells.COLUMNS);
    return List.copyOf(columns);
  }

  /**
   * Reads a fitting from the cells of a row.
   *
   * @throws Refusal with every fault found
   */
  public static Fitting read(Cells cells) {
    Map<FittingColumn, Double> numbers = new EnumMap<>(FittingColumn.class);
    for (FittingColumn number : FittingColumn.values()) {
      numbers.put(number, cells.number(number));
    }
    FittingRow row =
        new FittingRow(
            cells.partNumber("part_number"),
            cells.optional("description"),
            cells.choice("type", FittingType.class),
            cells.choice("finish", Finish.class),
            cells.optional("thread"),
            numbers,
            OfferCells.read(cells));
    if (cells.faults().isEmpty()) {
      row.checkJoint(cells);
    }
    if (!cells.faults().isEmpty()) {
      throw new Refusal(cells.faults());
    }
    return row.fitting();
  }

  public static FittingRow of(Fitting fitting) {
    Map<FittingColumn, Double> numbers = new EnumMap<>(FittingColumn.class);
    for (FittingColumn number : FittingColumn.values()) {
      numbers.put(number, number.of(fitting));
    }
    return new FittingRow(
        fitting.number(),
        fitting.description(),
        fitting.type(),
        fitting.finish(),
        fitting.thread(),
        numbers,
        fitting.offer());
  }

  /** The cells of the row in the order of {@link #COLUMNS}. */
  public List<String> cells() {
    List<String> cells = new ArrayList<>();
    cells.add(number);
    cells.add(description == null ? "" : description);
    cells.add(type.code());
    cells.add(finish.code());
    cells.add(thread == null ? "" : thread);
    numbers.forEach((column, value) -> cells.add(cell(column, value)));
    cells.addAll(OfferCells.write(offer));
    return cells;
  }

  /** The fitting in SI. */
  public Fitting fitting() {
    return new Fitting(
        number,
        description,
        type,
        finish,
        thread,
        Unit.MILLIMETRE.si(numbers.get(FittingColumn.LENGTH_TO_CENTRE)),
        numbers.get(FittingColumn.RATING),
        Unit.DEGREE.si(numbers.get(FittingColumn.SWING)),
        Unit.MILLIMETRE.si(numbers.get(FittingColumn.BALL_DIAMETER)),
        Unit.MILLIMETRE.si(numbers.get(FittingColumn.PIN_DIAMETER)),
        numbers.get(FittingColumn.MASS),
        offer);
  }

  private static String cell(FittingColumn column, double value) {
    return value == column.whenEmpty() ? "" : NumberColumn.text(value);
  }

  /** Whatever carries a spring's force needs a joint and a rating; all but a clip are screwed. */
  private void checkJoint(Cells cells) {
    boolean ball = numbers.get(FittingColumn.BALL_DIAMETER) > 0;
    boolean pin = numbers.get(FittingColumn.PIN_DIAMETER) > 0;
    boolean jointed =
        switch (type) {
          case BALL_SOCKET, BALL_STUD, RETAINING_CLIP -> ball;
          case EYELET, CLEVIS -> pin;
          case PLATE -> ball || pin;
        };
    if (!jointed) {
      boolean eye = type == FittingType.EYELET || type == FittingType.CLEVIS;
      FittingColumn lacking = eye ? FittingColumn.PIN_DIAMETER : FittingColumn.BALL_DIAMETER;
      cells.fault(new Fault(lacking.column(), null, "> 0 mm", "missing"));
    }
    if (type != FittingType.RETAINING_CLIP) {
      if (thread == null) {
        cells.fault(new Fault("thread", null, "M8", "missing"));
      }
      if (numbers.get(FittingColumn.RATING) == 0) {
        cells.fault(new Fault(FittingColumn.RATING.column(), null, "> 0 N", "missing"));
      }
    }
  }
}
