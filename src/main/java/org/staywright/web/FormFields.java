package org.staywright.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.form.Field;
import org.staywright.form.Kind;
import org.staywright.form.Shape;
import org.staywright.part.FittingType;
import org.staywright.unit.Fault;
import org.staywright.wording.Wording;

/** A form: what was typed, and beside each field what is wrong with it. */
public final class FormFields {

  /** Fields of a job that the form leaves out, or sends unseen. */
  private static final Set<String> NOT_ASKED =
      Set.of("load.type", "load.inertiaKgM2", "zones", "filters.families", "rankBy");

  private static final List<String> USUAL_COUNTS = List.of("1", "2", "3", "4");

  private final Wording wording;
  private final Shape shape;
  private final Map<String, List<String>> typed;
  private final Map<String, String> faults = new LinkedHashMap<>();

  FormFields(Wording wording, Shape shape, Map<String, List<String>> typed, List<Fault> found) {
    this.wording = wording;
    this.shape = shape;
    this.typed = typed;
    for (Fault fault : found) {
      String name = name(fault.where());
      faults.merge(name, wording.fault(fault.at(label(name))), (one, other) -> one + " " + other);
    }
  }

  /** "#/load/centreOfMassMm/x" to "load.centreOfMassMm.x"; an entry of a list to the list. */
  private static String name(String pointer) {
    return pointer.replaceFirst("^#?/?", "").replaceFirst("/\\d+$", "").replace('/', '.');
  }

  private String label(String name) {
    return shape.field(name).isEmpty() ? name : wording.text("page.field." + name);
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
      if (NOT_ASKED.contains(name)) {
        continue;
      }
      if (field.kind() instanceof Kind.Variants variants) {
        variants.shapes().forEach(inner -> collect(name + ".", inner, all));
      } else if (field.kind() instanceof Shape inner) {
        if (inner.fields().containsKey("x")) {
          all.add(of(name));
        }
        collect(name + ".", inner, all);
      } else {
        all.add(of(name));
      }
    }
  }

  /** True where one of the fields, named with spaces between, is wrong. */
  public boolean anyWrong(String names) {
    return Arrays.stream(names.split(" ")).anyMatch(faults::containsKey);
  }

  /** A field by its dotted name. */
  public Input of(String name) {
    Field field = shape.field(name).orElse(null);
    List<String> values = typed.getOrDefault(name, List.of());
    String fault = faults.getOrDefault(name, "");
    if (field == null) {
      return new Input(name, name, values, "", "text", fault, List.of(), List.of());
    }
    return new Input(
        name,
        label(name),
        values,
        unit(field.kind()),
        keyboard(field.kind()),
        fault,
        options(name, field, values),
        parts(name, field.kind()));
  }

  private static String unit(Kind kind) {
    if (kind instanceof Shape point && point.fields().containsKey("x")) {
      return unit(point.fields().get("x").kind());
    }
    return kind instanceof Kind.Amount amount ? amount.bound().unit() : "";
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

  private List<Input.Option> options(String name, Field field, List<String> values) {
    Set<String> words = new LinkedHashSet<>();
    if (field.kind() instanceof Kind.Choice choice) {
      if (!field.required() && field.fallback() == null) {
        words.add("");
      }
      words.addAll(choice.words());
    } else if (name.startsWith("fittings.")) {
      Stream.of(FittingType.values())
          .filter(FittingType::endsASpring)
          .map(FittingType::code)
          .forEach(words::add);
      words.addAll(values);
    } else if (field.kind() instanceof Kind.Listing) {
      words.addAll(USUAL_COUNTS);
      words.addAll(values);
    }
    return words.stream()
        .map(word -> new Input.Option(word, option(name, word), values.contains(word)))
        .toList();
  }

  /** What a person reads for a word of the interface; numbers and part numbers as they are. */
  private String option(String name, String word) {
    if (word.isEmpty()) {
      return wording.text("page.option.any");
    }
    if (!word.equals(word.toLowerCase(Locale.ROOT)) || Character.isDigit(word.charAt(0))) {
      return word;
    }
    String list =
        switch (name) {
          case "rankBy" -> "fit.rank-by.";
          case "filters.finish" -> "part.finish.";
          case "fittings.rodEnd", "fittings.tubeEnd" -> "part.fitting.";
          default -> "page.option.";
        };
    return wording.text(list + word);
  }
}
