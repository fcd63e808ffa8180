package org.staywright.part;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.staywright.spring.GasSpring;

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
      LocalDate stockDate,
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

  /** Parts that the columns cannot hold in full, by row: all but the open gas springs. */
  private final Map<Integer, Part> whole;

  private Range(Builder from, List<Fitting> fittings) {
    revision = from.revision;
    numbers = Arrays.copyOf(from.numbers, from.size);
    descriptions = Arrays.copyOf(from.descriptions, from.size);
    columns = new double[from.columns.length][];
    for (int c = 0; c < columns.length; c++) {
      columns[c] = Arrays.copyOf(from.columns[c], from.size);
    }
    makes = from.makes;
    make = Arrays.copyOf(from.make, from.size);
    stock = Arrays.copyOf(from.stock, from.size);
    leadTimeDays = Arrays.copyOf(from.leadTimeDays, from.size);
    prices = from.prices;
    whole = Map.copyOf(from.whole);
    this.fittings = fittings.stream().sorted(Comparator.comparing(Fitting::number)).toList();
  }

  /** The range of some parts, in any order. */
  public static Range of(int revision, List<Part> parts, List<Fitting> fittings) {
    Builder builder = new Builder(revision);
    parts.stream().sorted(Comparator.comparing(Part::number)).forEach(builder::add);
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

  public Offer offer(int row) {
    return new Offer(
        prices.get(row), stock[row], makes.value(make[row]).stockDate(), leadTimeDays[row]);
  }

  /** The whole part of a row. */
  public Part part(int row) {
    Part kept = whole.get(row);
    return kept == null ? fromColumns(row) : kept;
  }

  /** What works as an open gas spring in a row; only where {@link Column#GAS_MASS} is a number. */
  public GasSpring gasSpring(int row) {
    return new GasSpring(
        at(Column.ROD_DIAMETER, row),
        at(Column.TUBE_DIAMETER, row),
        at(Column.BORE_DIAMETER, row),
        at(Column.STROKE, row),
        at(Column.EXTENDED_LENGTH, row),
        at(Column.COMPRESSED_LENGTH, row),
        at(Column.FORCE, row),
        at(Column.FRICTION, row),
        at(Column.COLD_FRICTION_FACTOR, row),
        at(Column.GAS_VOLUME, row),
        at(Column.OIL_VOLUME, row));
  }

  private Part fromColumns(int row) {
    Make shared = makes.value(make[row]);
    return new Part(
        numbers[row],
        descriptions[row],
        shared.family(),
        shared.finish(),
        gasSpring(row),
        at(Column.FORCE_TOLERANCE, row),
        shared.ends(),
        new Part.Damping(
            at(Column.END_ZONE, row),
            at(Column.ORIFICE_DIAMETER, row),
            at(Column.ORIFICE_LENGTH, row),
            at(Column.COMPRESSION_FLOW_FACTOR, row),
            at(Column.WALL_TIME_CONSTANT, row)),
        new Part.Limits(
            at(Column.COLDEST, row), at(Column.HOTTEST, row), at(Column.PRESSURE_LIMIT, row)),
        new Part.Wear(at(Column.LOSS_PER_YEAR, row), at(Column.LOSS_PER_CYCLE, row)),
        at(Column.MASS, row),
        shared.mounting(),
        offer(row),
        shared.derived());
  }

  private double at(Column column, int row) {
    return columns[column.ordinal()][row];
  }

  /** Takes parts one by one, in the order of their numbers. */
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
    private final Map<Integer, Part> whole = new HashMap<>();

    public Builder(int revision) {
      this.revision = revision;
    }

    public void add(Part part) {
      if (size > 0 && numbers[size - 1].compareTo(part.number()) >= 0) {
        throw new IllegalArgumentException(
            "part " + part.number() + " after " + numbers[size - 1] + ": not in rising order");
      }
      if (size == numbers.length) {
        grow(2 * size);
      }
      numbers[size] = part.number();
      descriptions[size] = part.description();
      for (Column column : Column.values()) {
        columns[column.ordinal()][size] = column.of(part);
      }
      Offer offer = part.offer();
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
      if (part.family() != Family.GAS_SPRING) {
        whole.put(size, part);
      }
      size++;
    }

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
    }
  }
}
