package org.staywright.form.part;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.staywright.form.table.Cells;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Refusal;

/**
 * A part as a row of a file or a table: its numbers in the units of their columns.
 *
 * @param number part number
 * @param description null where none was given
 * @param family kind of spring
 * @param finish surface
 * @param ends threads
 * @param mounting how it wants to hang
 * @param locking what gives way when locked, null where nothing locks
 * @param numbers by column, only those that the family has
 * @param offer price, stock and lead time
 * @param derived names of the figures that were worked out rather than given
 */
public record PartRow(
    String number,
    String description,
    Family family,
    Finish finish,
    Part.Ends ends,
    Mounting mounting,
    Locking locking,
    Map<PartColumn, Double> numbers,
    Offer offer,
    List<String> derived) {

  /** Header of a file of parts of any family. */
  public static final List<String> COLUMNS = columns(List.of(PartColumn.values()), true);

  /** Header of a file of one family. */
  public static List<String> columns(Family family) {
    return columns(PartColumn.of(family), family.locks());
  }

  private static List<String> columns(List<PartColumn> numbers, boolean locking) {
    List<String> columns = new ArrayList<>(List.of("part_number", "description", "family"));
    columns.addAll(List.of("finish", "rod_thread", "tube_thread", "mounting"));
    if (locking) {
      columns.add("locking");
    }
    numbers.forEach(number -> columns.add(number.column()));
    columns.addAll(OfferCells.COLUMNS);
    return List.copyOf(columns);
  }

  /**
   * Reads a part from the cells of a row, every number of which must be there.
   *
   * @throws Refusal with every fault found
   */
  public static Part read(Cells cells) {
    Family family = cells.choice("family", Family.class);
    return read(cells, family, family == null ? Map.of() : numbers(family, cells), List.of());
  }

  /**
   * Reads a part from the cells of a row, of which some may be left to be worked out.
   *
   * @param hysteresis whether friction is given as F3 − F1 rather than half of it
   * @throws Refusal with every fault found
   */
  public static Part complete(Cells cells, boolean hysteresis) {
    Family family =
        cells.choice("family", FamilyColumn.codes(), Function.identity()) == null
            ? null
            : cells.choice("family", Family.class);
    if (family == null) {
      return read(cells, null, Map.of(), List.of());
    }
    Completion completion = new Completion(family, cells, hysteresis);
    for (PartColumn number : PartColumn.values()) {
      if (!completion.numbers().containsKey(number)) {
        cells.empty(number.column(), family.code());
      }
    }
    return read(cells, family, completion.numbers(), completion.derivedOf(cells));
  }

  private static Part read(
      Cells cells, Family family, Map<PartColumn, Double> numbers, List<String> derived) {
    PartRow row =
        new PartRow(
            cells.partNumber("part_number"),
            cells.optional("description"),
            family,
            cells.choice("finish", Finish.class),
            new Part.Ends(cells.required("rod_thread", "M8"), cells.required("tube_thread", "M8")),
            cells.choice("mounting", Mounting.class),
            family == null ? null : locking(family, cells),
            numbers,
            OfferCells.read(cells),
            derived);
    if (!cells.faults().isEmpty()) {
      throw new Refusal(cells.faults());
    }
    Part part = row.part();
    PartCheck.of(part).forEach(cells::fault);
    if (!cells.faults().isEmpty()) {
      throw new Refusal(cells.faults());
    }
    return part;
  }

  private static Locking locking(Family family, Cells cells) {
    if (family.locks()) {
      return cells.choice("locking", List.of(Locking.values()), Locking::code);
    }
    cells.empty("locking", family.code());
    return null;
  }

  private static Map<PartColumn, Double> numbers(Family family, Cells cells) {
    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    List<PartColumn> suiting = PartColumn.of(family);
    for (PartColumn number : PartColumn.values()) {
      if (suiting.contains(number)) {
        numbers.put(number, cells.number(number));
      } else {
        cells.empty(number.column(), family.code());
      }
    }
    return numbers;
  }

  public static PartRow of(Part part) {
    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    for (PartColumn number : PartColumn.of(part.family())) {
      numbers.put(number, number.of(part));
    }
    return new PartRow(
        part.number(),
        part.description(),
        part.family(),
        part.finish(),
        part.ends(),
        part.mounting(),
        part.lock().map(LockingSpring::locking).orElse(null),
        numbers,
        part.offer(),
        part.derived());
  }

  /** The cells of the row, in an order of columns. */
  public List<String> cells(List<String> columns) {
    Map<String, String> cells = new HashMap<>();
    cells.put("part_number", number);
    cells.put("description", description);
    cells.put("family", family.code());
    cells.put("finish", finish.code());
    cells.put("rod_thread", ends.rod());
    cells.put("tube_thread", ends.tube());
    cells.put("mounting", mounting.code());
    cells.put("derived", String.join(" ", derived));
    cells.put("locking", locking == null ? null : locking.code());
    numbers.forEach((column, value) -> cells.put(column.column(), NumberColumn.text(value)));
    List<String> offered = OfferCells.write(offer);
    for (int i = 0; i < offered.size(); i++) {
      cells.put(OfferCells.COLUMNS.get(i), offered.get(i));
    }
    return columns.stream().map(column -> cells.get(column)).map(PartRow::orEmpty).toList();
  }

  private static String orEmpty(String cell) {
    return cell == null ? "" : cell;
  }

  /** The part in SI. */
  public Part part() {
    return new PartOf(this).part();
  }
}
