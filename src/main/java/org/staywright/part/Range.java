package org.staywright.part;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;
import org.staywright.spring.Spring;

/**
 * All parts of one stock revision as columns, in the order of their numbers, and the end fittings
 * beside them. Immutable once built; the arrays it hands out are shared and only read.
 */
public final class Range {

  /** What a part shares with many others. */
  private record Make(
      Family family,
      Finish finish,
      Mounting mounting,
      Part.Ends ends,
      @Nullable LocalDate stockDate,
      List<String> derived) {}

  private final int revision;
  private final String[] numbers;
  private final String[] descriptions;
  private final double[][] columns;
  private final Dictionary<Make> makes;
  private final int[] make;
  private final int[] stock;
  private final int[] leadTimeDays;
  private final PriceColumn prices;
  private final List<Fitting> fittings;

  /** What the columns cannot hold in full: all but the open gas springs. */
  private final Spring[] springs;

  /** Empties the builder column by column, so that no more than one is there twice. */
  private Range(Builder from, List<Fitting> fittings) {
    int[] order = Reordered.rising(from.numbers, from.size);
    revision = from.revision;
    numbers = Reordered.of(from.numbers, order);
    for (int row = 1; row < numbers.length; row++) {
      if (numbers[row].equals(numbers[row - 1])) {
        throw new IllegalArgumentException("part " + numbers[row] + " twice");
      }
    }
    descriptions = Reordered.of(from.descriptions, order);
    columns = new double[from.columns.length][];
    for (int c = 0; c < columns.length; c++) {
      columns[c] = Reordered.of(from.columns[c], order);
      from.columns[c] = null;
    }
    makes = from.makes;
    make = Reordered.of(from.make, order);
    stock = Reordered.of(from.stock, order);
    leadTimeDays = Reordered.of(from.leadTimeDays, order);
    prices = from.prices.inOrder(order);
    springs = Reordered.of(from.springs, order);
    this.fittings = fittings.stream().sorted(Comparator.comparing(Fitting::number)).toList();
  }

  /** The range of some parts, in any order. */
  public static Range of(int revision, List<Part> parts, List<Fitting> fittings) {
    Builder builder = new Builder(revision);
    builder.addAll(parts);
    return builder.build(fittings);
  }

  public int revision() {
    return revision;
  }

  public int size() {
    return numbers.length;
  }

  public List<Fitting> fittings() {
    return fittings;
  }

  public Optional<Fitting> fitting(String number) {
    return fittings.stream().filter(fitting -> fitting.number().equals(number)).findFirst();
  }

  public double[] column(Column column) {
    return columns[column.ordinal()];
  }

  public String number(int row) {
    return numbers[row];
  }

  /** In the range's own words, null where none were given. */
  public String description(int row) {
    return descriptions[row];
  }

  public OptionalInt row(String number) {
    int row = Arrays.binarySearch(numbers, number);
    return row < 0 ? OptionalInt.empty() : OptionalInt.of(row);
  }

  public Optional<Part> part(String number) {
    OptionalInt row = row(number);
    return row.isPresent() ? Optional.of(part(row.getAsInt())) : Optional.empty();
  }

  public Family family(int row) {
    return makes.value(make[row]).family();
  }

  public Finish finish(int row) {
    return makes.value(make[row]).finish();
  }

  public Part.Ends ends(int row) {
    return makes.value(make[row]).ends();
  }

  public int stock(int row) {
    return stock[row];
  }

  public int leadTimeDays(int row) {
    return leadTimeDays[row];
  }

  /** Infinite where there is no price. */
  double priceOfOne(int row) {
    return prices.one(row);
  }

  public Offer offer(int row) {
    return new Offer(
        prices.get(row), stock[row], makes.value(make[row]).stockDate(), leadTimeDays[row]);
  }

  /** The whole part of a row. */
  public Part part(int row) {
    Make shared = makes.value(make[row]);
    return new Part(
        numbers[row],
        descriptions[row],
        shared.family(),
        shared.finish(),
        springs[row] == null ? gasSpring(row) : springs[row],
        at(Column.FORCE_TOLERANCE, row),
        shared.ends(),
        shared.family().hasGas() ? damping(row) : null,
        new Part.Limits(
            at(Column.COLDEST, row), at(Column.HOTTEST, row), at(Column.PRESSURE_LIMIT, row)),
        new Part.Wear(at(Column.LOSS_PER_YEAR, row), at(Column.LOSS_PER_CYCLE, row)),
        at(Column.MASS, row),
        shared.mounting(),
        offer(row),
        shared.derived());
  }

  private Part.Damping damping(int row) {
    return new Part.Damping(
        at(Column.END_ZONE, row),
        at(Column.ORIFICE_DIAMETER, row),
        at(Column.ORIFICE_LENGTH, row),
        at(Column.COMPRESSION_FLOW_FACTOR, row),
        at(Column.WALL_TIME_CONSTANT, row));
  }

  /** What works as an open gas spring in a row; only where {@link Column#GAS_MASS} is a number. */
  public GasSpring gasSpring(int row) {
    return new GasSpring(
        new Cylinder(
            at(Column.ROD_DIAMETER, row),
            at(Column.TUBE_DIAMETER, row),
            at(Column.BORE_DIAMETER, row),
            at(Column.STROKE, row),
            at(Column.EXTENDED_LENGTH, row),
            at(Column.COMPRESSED_LENGTH, row),
            at(Column.FRICTION, row),
            at(Column.COLD_FRICTION_FACTOR, row),
            at(Column.GAS_VOLUME, row),
            at(Column.OIL_VOLUME, row)),
        at(Column.FORCE, row));
  }

  private double at(Column column, int row) {
    return columns[column.ordinal()][row];
  }

  /** Takes parts in any order. */
  public static final class Builder {

    private final int revision;
    private int size;
    private String[] numbers = new String[64];
    private String[] descriptions = new String[64];
    private final double[][] columns = new double[Column.values().length][64];
    private final Dictionary<Make> makes = new Dictionary<>();
    private int[] make = new int[64];
    private int[] stock = new int[64];
    private int[] leadTimeDays = new int[64];
    private final PriceColumn prices = new PriceColumn();
    private Spring[] springs = new Spring[64];

    public Builder(int revision) {
      this.revision = revision;
    }

    public void addAll(List<Part> parts) {
      while (size + parts.size() > numbers.length) {
        grow(2 * numbers.length);
      }
      int first = size;
      IntStream.range(0, parts.size()).parallel().forEach(i -> measure(first + i, parts.get(i)));
      parts.forEach(this::add);
    }

    /** Filling springs with gas takes longest. */
    private void measure(int row, Part part) {
      for (Column column : Column.values()) {
        columns[column.ordinal()][row] = column.of(part);
      }
    }

    private void add(Part part) {
      Offer offer = part.offer();
      numbers[size] = part.number();
      descriptions[size] = part.description();
      make[size] =
          makes.code(
              new Make(
                  part.family(),
                  part.finish(),
                  part.mounting(),
                  part.ends(),
                  offer.stockDate(),
                  part.derived()));
      stock[size] = offer.stock();
      leadTimeDays[size] = offer.leadTimeDays();
      prices.add(size, offer.price());
      springs[size] = part.family() == Family.GAS_SPRING ? null : part.spring();
      size++;
    }

    /** The range of all of them, of which no two may have one number. */
    public Range build(List<Fitting> fittings) {
      return new Range(this, fittings);
    }

    private void grow(int length) {
      numbers = Arrays.copyOf(numbers, length);
      descriptions = Arrays.copyOf(descriptions, length);
      for (int c = 0; c < columns.length; c++) {
        columns[c] = Arrays.copyOf(columns[c], length);
      }
      make = Arrays.copyOf(make, length);
      stock = Arrays.copyOf(stock, length);
      leadTimeDays = Arrays.copyOf(leadTimeDays, length);
      springs = Arrays.copyOf(springs, length);
    }
  }
}
