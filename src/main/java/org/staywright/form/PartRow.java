package org.staywright.form;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.GasSpring;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * A part as a row of a file or a table: its numbers in the units of their columns.
 *
 * @param number part number
 * @param description null where none was given
 * @param family kind of spring
 * @param finish surface
 * @param ends threads
 * @param mounting how it wants to hang
 * @param numbers by column
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
    Map<PartColumn, Double> numbers,
    Offer offer,
    List<String> derived) {

  /** Header of a file of parts. */
  public static final List<String> COLUMNS = columns();

  private static final double CYCLES = 10_000;

  private static List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("part_number", "description", "family"));
    columns.addAll(List.of("finish", "rod_thread", "tube_thread", "mounting"));
    for (PartColumn number : PartColumn.values()) {
      columns.add(number.column());
    }
    columns.addAll(OfferCells.COLUMNS);
    return List.copyOf(columns);
  }

  /**
   * Reads a part from the cells of a row.
   *
   * @throws Refusal with every fault found
   */
  public static Part read(Cells cells) {
    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    for (PartColumn number : PartColumn.values()) {
      numbers.put(number, cells.number(number));
    }
    PartRow row =
        new PartRow(
            cells.partNumber("part_number"),
            cells.optional("description"),
            cells.choice("family", Family.class),
            cells.choice("finish", Finish.class),
            new Part.Ends(cells.required("rod_thread", "M8"), cells.required("tube_thread", "M8")),
            cells.choice("mounting", Mounting.class),
            numbers,
            OfferCells.read(cells),
            List.of());
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

  public static PartRow of(Part part) {
    Map<PartColumn, Double> numbers = new EnumMap<>(PartColumn.class);
    for (PartColumn number : PartColumn.values()) {
      numbers.put(number, number.of(part));
    }
    return new PartRow(
        part.number(),
        part.description(),
        part.family(),
        part.finish(),
        part.ends(),
        part.mounting(),
        numbers,
        part.offer(),
        part.derived());
  }

  /** The cells of the row in the order of {@link #COLUMNS}. */
  public List<String> cells() {
    List<String> cells = new ArrayList<>();
    cells.add(number);
    cells.add(description == null ? "" : description);
    cells.add(family.code());
    cells.add(finish.code());
    cells.add(ends.rod());
    cells.add(ends.tube());
    cells.add(mounting.code());
    numbers.values().forEach(value -> cells.add(NumberColumn.text(value)));
    cells.addAll(OfferCells.write(offer));
    return cells;
  }

  /** The part in SI. */
  public Part part() {
    GasSpring spring =
        new GasSpring(
            metres(PartColumn.ROD_DIAMETER),
            metres(PartColumn.TUBE_DIAMETER),
            metres(PartColumn.BORE_DIAMETER),
            metres(PartColumn.STROKE),
            metres(PartColumn.EXTENDED_LENGTH),
            metres(PartColumn.COMPRESSED_LENGTH),
            get(PartColumn.FORCE_CLASS),
            get(PartColumn.FRICTION),
            get(PartColumn.COLD_FRICTION_FACTOR),
            Unit.MILLILITRE.si(get(PartColumn.GAS_VOLUME)),
            Unit.MILLILITRE.si(get(PartColumn.OIL_VOLUME)));
    Part.Damping damping =
        new Part.Damping(
            metres(PartColumn.END_DAMPING),
            metres(PartColumn.ORIFICE_DIAMETER),
            metres(PartColumn.ORIFICE_LENGTH),
            get(PartColumn.COMPRESSION_FLOW_FACTOR),
            get(PartColumn.WALL_TIME_CONSTANT));
    Part.Limits limits =
        new Part.Limits(
            Unit.CELSIUS.si(get(PartColumn.MIN_TEMPERATURE)),
            Unit.CELSIUS.si(get(PartColumn.MAX_TEMPERATURE)),
            Unit.BAR.si(get(PartColumn.MAX_PRESSURE)));
    Part.Wear wear =
        new Part.Wear(
            Unit.PERCENT.si(get(PartColumn.LOSS_PER_YEAR)),
            Unit.PERCENT.si(get(PartColumn.LOSS_PER_10K_CYCLES)) / CYCLES);
    return new Part(
        number,
        description,
        family,
        finish,
        spring,
        get(PartColumn.FORCE_TOLERANCE),
        ends,
        damping,
        limits,
        wear,
        get(PartColumn.MASS),
        mounting,
        offer,
        derived);
  }

  private double get(PartColumn number) {
    return numbers.get(number);
  }

  private double metres(PartColumn number) {
    return Unit.MILLIMETRE.si(get(number));
  }
}
