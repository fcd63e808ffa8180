package org.staywright.web.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.Group;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.unit.Fault;
import org.staywright.wording.Wording;

/** A form: what was typed, and beside each field what is wrong with it. */
public final class FormFields {

  /** Fields of a job that the form leaves out, or sends unseen. */
  static final Set<String> UNSEEN = Set.of("load.type", "load.inertiaKgM2", "zones");

  /** Brought up to date with the ranking that it belongs to. */
  private static final String RANK_BY = "rankBy";

  /** A member of an entry of a list. */
  private static final Pattern ENTRY =
      Pattern.compile("(.*)/(\\d{1,9})/((?:[a-zA-Z]\\w*/)*[a-zA-Z]\\w*)");

  /** Faults said of one field; more of a kind tell nothing new. */
  private static final int MOST_SAID = 5;

  static final String FITTINGS = "fittings.";

  private static final List<String> USUAL_COUNTS = List.of("1", "2", "3", "4");

  private final Wording wording;
  private final Shape shape;
  private final Typed typed;
  private final List<Fitting> fittings;
  private final Map<String, String> faults = new LinkedHashMap<>();

  public FormFields(
      Wording wording, Shape shape, Map<String, List<String>> values, List<Fault> found) {
    this(wording, shape, new Typed(values, Map.of()), found, List.of());
  }

  /**
   * @param fittings that a field may name by number
   */
  public FormFields(
      Wording wording, Shape shape, Typed typed, List<Fault> found, List<Fitting> fittings) {
    this.fittings = fittings;
    this.wording = wording;
    this.shape = shape;
    this.typed = typed;
    Map<String, Integer> said = new HashMap<>();
    for (Fault fault : found) {
      String name = name(fault.where());
      if (said.merge(name, 1, Integer::sum) <= MOST_SAID) {
        Fault placed = fault.at(place(fault.where()));
        Kind kind = shape.field(name).map(Field::kind).orElse(null);
        String sentence =
            kind instanceof Kind.Amount amount
                ? wording.fault(placed, amount.bound())
                : wording.fault(placed);
        faults.merge(name, sentence, (one, other) -> one + " " + other);
      }
    }
  }

  /** "#/load/centreOfMassMm/x" to "load.centreOfMassMm.x"; a line of a table to the table. */
  private String name(String pointer) {
    String name = dotted(pointer);
    return has(name) ? name : dotted(pointer.replaceFirst("/\\d+(/.*)?$", ""));
  }

  private static String dotted(String pointer) {
    return pointer.replaceFirst("^#?/?", "").replace('/', '.');
  }

  /** A field by its label; in a list also which entry and what of it. */
  private String place(String pointer) {
    Matcher entry = ENTRY.matcher(pointer);
    if (!entry.matches()) {
      return label(name(pointer));
    }
    String list = dotted(entry.group(1));
    int number = Integer.parseInt(entry.group(2)) + 1;
    return wording.text(
        "page.entry",
        label(list),
        wording.number(number, 0),
        label(list + "." + dotted(entry.group(3))));
  }

  /** The same for every entry of a list. */
  private String label(String name) {
    String key = "field." + name.replaceAll("\\.\\d+", "");
    return wording.knows(key) ? wording.text(key) : name;
  }

  /** Fields that are wrong, in the order found. */
  public List<Input> wrong() {
    return faults.keySet().stream().map(this::of).toList();
  }

  /** Every field that stands in the form, for those that are brought up to date. */
  public List<Input> all() {
    List<Input> all = new ArrayList<>();
    collect("", shape, all);
    return all;
  }

  private void collect(String prefix, Shape part, List<Input> all) {
    for (Field field : part.fields().values()) {
      String name = prefix + field.name();
      if (UNSEEN.contains(name) || name.equals(RANK_BY)) {
        continue;
      }
      if (field.kind() instanceof Kind.Variants variants) {
        variants.shapes().forEach(inner -> collect(name + ".", inner, all));
      } else if (field.kind() instanceof Shape inner) {
        if (inner.isPoint()) {
          all.add(of(name));
        }
        collect(name + ".", inner, all);
      } else if (name.equals(Slot.BESIDE) && field.kind() instanceof Kind.Many many) {
        Shape entry = (Shape) many.of();
        Slot.numbers(typed.texts(), false)
            .forEach(slot -> collect(name + "." + slot + ".", entry, all));
      } else {
        all.add(of(name));
      }
    }
  }

  /** All that is asked for in groups. */
  public List<FieldGroup> groups() {
    return shape.groups().entrySet().stream()
        .map(each -> FieldGroup.of(each.getKey(), each.getValue(), shape, this))
        .toList();
  }

  /** "" where there is nothing to say. */
  String said(String key) {
    return wording.knows(key) ? wording.text(key) : "";
  }

  /** What acts along: each slot that is filled, and one to fill in. */
  public List<Slot> beside() {
    int most = ((Kind.Many) shape.field(Slot.BESIDE).orElseThrow().kind()).most();
    int shown = Math.min(most, Slot.numbers(typed.values(), true).size() + 1);
    return IntStream.range(0, shown).mapToObj(slot -> Slot.of(this, slot)).toList();
  }

  /** True where one of the fields, named with spaces between, or anything in one is wrong. */
  public boolean anyWrong(String names) {
    return Arrays.stream(names.split(" ")).anyMatch(this::wrong);
  }

  /** True where an object that stands in a group is wrong as a whole. */
  boolean wrong(Group group) {
    return faults.keySet().stream()
        .flatMap(at -> shape.field(at).stream())
        .anyMatch(field -> group.equals(field.group()));
  }

  boolean wrong(String name) {
    return faults.keySet().stream().anyMatch(at -> (at + '.').startsWith(name + '.'));
  }

  /** Whether there is such a field in this form. */
  public boolean has(String name) {
    return shape.field(name).isPresent();
  }

  /** A field by its dotted name. */
  public Input of(String name) {
    Field field = shape.field(name).orElse(null);
    List<String> values = values(name, field);
    String fault = faults.getOrDefault(name, "");
    if (field == null) {
      return Input.plain(name, name, values, fault);
    }
    List<Input> parts = parts(name, field.kind());
    Entry entry =
        Entry.of(name, field, values, typed.texts().getOrDefault(name, List.of()), wording);
    return new Input(
        name,
        label(name),
        entry.texts(),
        parts.isEmpty() ? entry.unit() : parts.get(0).unit(),
        keyboard(field.kind()),
        fault,
        options(name, field, values),
        parts,
        entry.shown(),
        entry.read());
  }

  /** The fitting of an end, "rodEnd" or "tubeEnd". */
  public FittingField fitting(String end) {
    return FittingField.of(of(FITTINGS + end), fittings, wording);
  }

  /** As typed; what is not there at all shows its default. */
  private List<String> values(String name, Field field) {
    List<String> given = typed.values().get(name);
    if (given != null || field == null || field.fallback() == null) {
      return given == null ? List.of() : given;
    }
    return field.fallback().isObject() ? List.of() : FlatForm.texts(field.fallback());
  }

  /** Some keyboards for decimals have no minus sign. */
  private static String keyboard(Kind kind) {
    if (kind instanceof Kind.Whole) {
      return "numeric";
    }
    return kind instanceof Kind.Amount amount && amount.bound().low() >= 0 ? "decimal" : "text";
  }

  private List<Input> parts(String name, Kind kind) {
    return kind instanceof Shape shape
        ? shape.fields().keySet().stream().map(part -> of(name + "." + part)).toList()
        : List.of();
  }

  /** The words to choose from, and whatever else was typed as it is. */
  private List<Input.Option> options(String name, Field field, List<String> values) {
    Map<String, String> labels = new LinkedHashMap<>();
    if (field.kind() instanceof Kind.Choice choice && !UNSEEN.contains(name)) {
      if (!field.required() && field.fallback() == null) {
        labels.put("", wording.text("option.any"));
      }
      choice.words().forEach(word -> labels.put(word, wording.text(list(name) + word)));
    } else if (name.startsWith(FITTINGS)) {
      Stream.of(FittingType.values())
          .filter(FittingType::endsASpring)
          .map(FittingType::code)
          .forEach(word -> labels.put(word, wording.text(list(name) + word)));
    } else if (field.kind() instanceof Kind.Listing listing
        && listing.of() instanceof Kind.Choice choice) {
      choice.words().forEach(word -> labels.put(word, wording.text(list(name) + word)));
    } else if (field.kind() instanceof Kind.Listing) {
      USUAL_COUNTS.forEach(count -> labels.put(count, count));
    } else {
      return List.of();
    }
    values.forEach(value -> labels.putIfAbsent(value, value));
    return labels.entrySet().stream()
        .map(e -> new Input.Option(e.getKey(), e.getValue(), values.contains(e.getKey())))
        .toList();
  }

  /** Where the words of a field stand. */
  private static String list(String name) {
    return switch (name) {
      case RANK_BY -> "fit.rank-by.";
      case "filters.families" -> "part.family.";
      case "filters.finish" -> "part.finish.";
      case "spring" -> "corner.spring.";
      case "loadState" -> "corner.load.";
      case "fittings.rodEnd", "fittings.tubeEnd" -> "part.fitting.";
      default -> "option.";
    };
  }
}
