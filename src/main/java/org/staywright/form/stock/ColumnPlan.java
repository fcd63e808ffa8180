package org.staywright.form.stock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.staywright.form.table.Cells;
import org.staywright.form.table.NumberColumn;
import org.staywright.unit.Fault;
import org.staywright.unit.Unit;

/**
 * What the columns of a file mean: each header is matched by name, its unit by the end of the name.
 * The same plan reads a row for a dry run and for good.
 */
public final class ColumnPlan {

  /** What stands for a column that is left out. */
  public static final String LEFT_OUT = "-";

  /** What a change begins with that names a column by its place. */
  public static final String PLACE = "#";

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,20}(\\.\\d{0,20})?|\\.\\d{1,20})([eE][+-]?\\d{1,3})?");

  /** How units are spelled at the end of a header. */
  private static final Map<Unit, List<String>> ENDINGS = endings();

  private static final Map<String, Meaning> KNOWN = known();

  /**
   * A header of the file and what it means.
   *
   * @param header as it stands in the file
   * @param meaning null where the column is left out
   * @param unknown whether it is left out because nothing is known by that name
   */
  public record Matched(String header, Meaning meaning, boolean unknown) {}

  /**
   * @param column of the stock
   * @param unit of the file's numbers, null where there is none
   */
  public record Meaning(StockColumn column, Unit unit) {

    /** The name with this unit in it. */
    public String name() {
      return unit == null || unit == column.unit()
          ? column.name()
          : base(column) + "_" + ENDINGS.get(unit).get(0);
    }
  }

  private final List<Matched> columns = new ArrayList<>();
  private final List<String> read = new ArrayList<>();
  private final Map<String, Integer> places = new HashMap<>();
  private final List<Fault> faults = new ArrayList<>();

  private ColumnPlan() {}

  /**
   * @param header names in the order of the file
   * @param changes what some columns mean other than their names say, {@link #LEFT_OUT} for
   *     nothing; by header, or by place as in "#3"
   */
  public static ColumnPlan of(List<String> header, Map<String, String> changes) {
    ColumnPlan plan = new ColumnPlan();
    for (int i = 0; i < header.size(); i++) {
      String name = header.get(i).strip();
      String change = changes.getOrDefault(PLACE + (i + 1), changes.get(name));
      plan.match(name, change == null ? name : change, change != null);
    }
    plan.columns.forEach(
        column -> plan.read.add(column.meaning() == null ? null : column.header()));
    for (String needed : List.of("part_number", "family")) {
      if (!plan.places.containsKey(needed)) {
        plan.faults.add(new Fault(needed, null, needed, "missing"));
      }
    }
    return plan;
  }

  /** A name that nobody said on purpose may be one of a column that is none of ours. */
  private void match(String header, String name, boolean said) {
    if (name.equals(LEFT_OUT) || name.isEmpty()) {
      columns.add(new Matched(header, null, false));
      return;
    }
    Meaning meaning = KNOWN.get(normal(name));
    if (meaning == null) {
      List<String> ways = withUnit(name);
      if (!ways.isEmpty()) {
        faults.add(new Fault(header, name, String.join(", ", ways), "unit-missing"));
      } else if (said) {
        faults.add(new Fault(header, name, String.join(", ", names()), "unknown-column"));
      }
    } else {
      Integer other = places.putIfAbsent(meaning.column().name(), columns.size());
      if (other != null) {
        faults.add(twice(columns.get(other), header, meaning));
      }
    }
    columns.add(new Matched(header, meaning, meaning == null));
  }

  private static Fault twice(Matched other, String header, Meaning meaning) {
    if (other.header().equals(header)) {
      return new Fault(header, header, header, "repeated");
    }
    boolean sameUnit = other.meaning().unit() == meaning.unit();
    return new Fault(header, header, other.header(), sameUnit ? "same-column" : "units-contradict");
  }

  /** What a name may become that lacks its unit. */
  private static List<String> withUnit(String name) {
    String bare = normal(name);
    return KNOWN.values().stream()
        .filter(meaning -> meaning.unit() != null && base(meaning.column()).equals(bare))
        .map(Meaning::name)
        .distinct()
        .sorted()
        .toList();
  }

  private static List<String> names() {
    return StockColumn.ALL.stream().map(StockColumn::name).toList();
  }

  /** Every name that can be chosen for a header. */
  public static List<String> choices() {
    return KNOWN.values().stream().map(Meaning::name).distinct().sorted().toList();
  }

  /** The headers of the file with their meanings, in its order. */
  public List<Matched> columns() {
    return List.copyOf(columns);
  }

  /** The headers of what is read, null where a column is left out. */
  public List<String> read() {
    return read;
  }

  /** What is wrong with the header. */
  public List<Fault> faults() {
    return List.copyOf(faults);
  }

  /** The cells of a row by the stock's columns, in their units. */
  public Cells cells(List<String> row) {
    return new Cells(name -> cell(name, row));
  }

  /** The same as texts, by the names of the stock's columns; what is empty is left out. */
  public Map<String, String> texts(List<String> row) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (Matched column : columns) {
      String text = column.meaning() == null ? null : cell(column.meaning().column().name(), row);
      if (text != null && !text.isBlank()) {
        texts.put(column.meaning().column().name(), Cells.clip(text.strip()));
      }
    }
    return texts;
  }

  private String cell(String name, List<String> row) {
    Integer place = places.get(name);
    if (place == null || place >= row.size()) {
      return null;
    }
    Meaning meaning = columns.get(place).meaning();
    String text = row.get(place);
    return meaning.unit() == meaning.column().unit() || text == null
        ? text
        : converted(text.strip(), meaning);
  }

  /**
   * Twelve figures: what a column in millimetres keeps. What is no number is left to be refused.
   */
  private static String converted(String text, Meaning meaning) {
    if (!NUMBER.matcher(text).matches()) {
      return text;
    }
    double value = meaning.column().unit().of(meaning.unit().si(Double.parseDouble(text)));
    return Double.isFinite(value) ? NumberColumn.text(NumberColumn.tidy(value)) : text;
  }

  /** A fault of a row as the file has it: its own header and the text of its cell. */
  public Fault asInFile(Fault fault, List<String> row) {
    Integer place = places.get(fault.where());
    if (place == null) {
      return fault;
    }
    String text = place < row.size() ? row.get(place) : null;
    Object value = text == null || text.isBlank() ? fault.value() : Cells.clip(text.strip());
    return new Fault(columns.get(place).header(), value, fault.bound(), fault.code());
  }

  private static String normal(String name) {
    return name.toLowerCase(Locale.ROOT)
        .replace("³", "3")
        .replace("°", "")
        .replace("%", "percent")
        .replace("/", " per ")
        .replaceAll("[^\\p{L}0-9]+", "_")
        .replaceAll("^_|_$", "");
  }

  private static String base(StockColumn column) {
    return ENDINGS.get(column.unit()).stream()
        .filter(ending -> column.name().endsWith("_" + ending))
        .map(ending -> column.name().substring(0, column.name().length() - ending.length() - 1))
        .findFirst()
        .orElse(column.name());
  }

  private static Map<String, Meaning> known() {
    Map<String, Meaning> known = new HashMap<>();
    for (StockColumn column : StockColumn.ALL) {
      known.put(column.name(), new Meaning(column, column.unit()));
      if (column.unit() != null) {
        ENDINGS.forEach(
            (unit, endings) -> {
              if (unit.dimension() == column.unit().dimension()) {
                endings.forEach(
                    ending ->
                        known.putIfAbsent(base(column) + "_" + ending, new Meaning(column, unit)));
              }
            });
      }
    }
    return known.entrySet().stream()
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  private static Map<Unit, List<String>> endings() {
    Map<Unit, List<String>> endings = new EnumMap<>(Unit.class);
    endings.put(Unit.MILLIMETRE, List.of("mm"));
    endings.put(Unit.CENTIMETRE, List.of("cm"));
    endings.put(Unit.METRE, List.of("m"));
    endings.put(Unit.INCH, List.of("in", "inch", "inches"));
    endings.put(Unit.FOOT, List.of("ft"));
    endings.put(Unit.MILLILITRE, List.of("ml", "cm3", "cc"));
    endings.put(Unit.LITRE, List.of("l"));
    endings.put(Unit.CUBIC_INCH, List.of("in3", "cu_in"));
    endings.put(Unit.NEWTON, List.of("n"));
    endings.put(Unit.KILONEWTON, List.of("kn"));
    endings.put(Unit.POUND_FORCE, List.of("lbf"));
    endings.put(Unit.KILOGRAM_FORCE, List.of("kgf"));
    endings.put(Unit.KILOGRAM, List.of("kg"));
    endings.put(Unit.GRAM, List.of("g"));
    endings.put(Unit.POUND, List.of("lb", "lbs"));
    endings.put(Unit.OUNCE, List.of("oz"));
    endings.put(Unit.BAR, List.of("bar"));
    endings.put(Unit.MEGAPASCAL, List.of("mpa"));
    endings.put(Unit.GIGAPASCAL, List.of("gpa"));
    endings.put(Unit.PSI, List.of("psi"));
    endings.put(Unit.MILLIMETRE_PER_SECOND, List.of("mm_per_s"));
    endings.put(Unit.METRE_PER_SECOND, List.of("m_per_s"));
    endings.put(Unit.INCH_PER_SECOND, List.of("in_per_s"));
    endings.put(Unit.SECOND, List.of("s"));
    endings.put(Unit.CELSIUS, List.of("c"));
    endings.put(Unit.FAHRENHEIT, List.of("f"));
    endings.put(Unit.DEGREE, List.of("deg"));
    return endings;
  }
}
