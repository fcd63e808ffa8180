package org.staywright.web.replace;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.staywright.form.replace.ReplacementForm;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.part.FittingType;
import org.staywright.unit.Fault;
import org.staywright.web.chart.Pictures;
import org.staywright.web.field.Entry;
import org.staywright.web.field.Input;
import org.staywright.wording.Wording;

/** The questions about an old spring, with what was typed and what is wrong with it. */
public final class ReplaceFields {

  /**
   * @param name of it
   * @param title in words
   * @param hint how to go about it
   * @param drawing where to measure, null for none
   * @param open whether its fields show at once
   * @param ticks to be set or not
   * @param measures sizes with their uncertainty
   * @param choices one of several each
   * @param fields all others
   */
  public record Question(
      String name,
      String title,
      String hint,
      RawString drawing,
      boolean open,
      List<Input> ticks,
      List<Measure> measures,
      List<Input> choices,
      List<Input> fields) {}

  /** A size and how far off it may be. */
  public record Measure(Input size, Input off) {}

  private final Map<String, List<String>> asked;
  private final Map<String, List<String>> typed;
  private final List<Fault> faults;
  private final boolean all;
  private final Wording wording;

  ReplaceFields(Map<String, List<String>> typed, List<Fault> faults, boolean all, Wording wording) {
    this(ReplaceQuestions.ALL, typed, faults, all, wording);
  }

  private ReplaceFields(
      Map<String, List<String>> asked,
      Map<String, List<String>> typed,
      List<Fault> faults,
      boolean all,
      Wording wording) {
    this.asked = asked;
    this.typed = typed;
    this.faults = faults;
    this.all = all;
    this.wording = wording;
  }

  /** The steps that find a force at the flap; whatever else was typed is carried along. */
  static ReplaceFields survey(Map<String, List<String>> typed, Wording wording) {
    return new ReplaceFields(ReplaceQuestions.SURVEY, typed, List.of(), true, wording);
  }

  /** What was typed and is not asked here. */
  public List<Input> carried() {
    return typed.entrySet().stream()
        .filter(each -> asked.values().stream().flatMap(List::stream).noneMatch(isOf(each)))
        .map(each -> Input.plain(each.getKey(), "", each.getValue(), ""))
        .toList();
  }

  private static Predicate<String> isOf(Map.Entry<String, List<String>> typed) {
    String name = typed.getKey();
    return field -> name.equals(field) || name.startsWith(field + ".");
  }

  public boolean all() {
    return all;
  }

  public List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    asked.forEach(
        (name, fields) -> {
          boolean open = all || questions.isEmpty();
          questions.add(question(name, fields, open));
        });
    return questions;
  }

  private Question question(String name, List<String> fields, boolean open) {
    List<Input> ticks = new ArrayList<>();
    List<Measure> measures = new ArrayList<>();
    List<Input> choices = new ArrayList<>();
    List<Input> others = new ArrayList<>();
    for (String field : fields) {
      boolean measured = ReplacementForm.SHAPE.field(field + ".plusMinus").isPresent();
      if (ReplacementForm.SHAPE
          .field(field)
          .filter(f -> f.kind() instanceof Kind.Flag)
          .isPresent()) {
        ticks.add(input(field));
      } else if (measured) {
        measures.add(new Measure(input(field + ".value"), input(field + ".plusMinus")));
      } else {
        Input input = input(field);
        (input.options().isEmpty() ? others : choices).add(input);
      }
    }
    boolean wrong =
        Stream.of(
                ticks.stream(),
                choices.stream(),
                others.stream(),
                measures.stream().flatMap(each -> Stream.of(each.size(), each.off())))
            .flatMap(inputs -> inputs)
            .anyMatch(Input::wrong);
    return new Question(
        name,
        wording.text("replace.question." + name),
        wording.text("replace.question." + name + ".about"),
        Pictures.whereToMeasure(name, wording),
        open || wrong,
        ticks,
        measures,
        choices,
        others);
  }

  /** What is wrong, a sentence each beside the field it is about. */
  public List<Input> wrong() {
    List<Input> wrong = new ArrayList<>();
    for (Fault fault : faults) {
      String name = name(fault);
      String sentence = wording.fault(fault.at(label(name)));
      wrong.add(Input.plain(entry(name), label(name), List.of(), sentence));
    }
    return wrong;
  }

  /** The field that is typed into for a reading at fault. */
  private static String entry(String name) {
    return Stream.of(".value", ".force.value")
        .map(name::concat)
        .filter(field -> ReplacementForm.SHAPE.field(field).isPresent())
        .findFirst()
        .orElse(name);
  }

  private static String name(Fault fault) {
    return fault.where().replaceFirst("^#?/?", "").replace('/', '.');
  }

  private String label(String name) {
    String plain = name.replaceFirst("\\.value$", "");
    String key = "replace.field." + (plain.isEmpty() ? "anything" : plain);
    return wording.knows(key) ? wording.text(key) : plain;
  }

  private Input input(String name) {
    Field field = ReplacementForm.SHAPE.field(name).orElse(null);
    String given = typed.getOrDefault(name, List.of("")).get(0);
    boolean shown = given.isEmpty() && field != null && field.fallback() != null;
    String value = shown ? field.fallback().asText() : given;
    String fault =
        faults.stream()
            .filter(each -> entry(name(each)).equals(name))
            .map(each -> wording.fault(each.at(label(name))))
            .findFirst()
            .orElse("");
    boolean off = name.endsWith(".plusMinus");
    String label =
        off ? wording.text("replace.off", label(name.replace(".plusMinus", ""))) : label(name);
    Entry entry = Entry.of(name, field, List.of(value), List.of(), wording);
    return new Input(
        name,
        label,
        entry.texts(),
        entry.unit(),
        "text",
        fault,
        options(name, field, value),
        List.of(),
        entry.shown(),
        "");
  }

  private List<Input.Option> options(String name, Field field, String value) {
    Map<String, String> words = new LinkedHashMap<>();
    if (name.equals("rodEnd") || name.equals("tubeEnd")) {
      words.put("", wording.text("replace.option.unknown"));
      for (FittingType type : FittingType.values()) {
        if (type.endsASpring()) {
          words.put(type.code(), wording.text("part.fitting." + type.code()));
        }
      }
    } else if (field != null && field.kind() instanceof Kind.Choice choice) {
      if (field.fallback() == null) {
        words.put("", wording.text("replace.option.unknown"));
      }
      String list = name.equals("finish") ? "part.finish." : "replace.option.";
      choice.words().forEach(word -> words.put(word, wording.text(list + word)));
    }
    return words.entrySet().stream()
        .map(e -> new Input.Option(e.getKey(), e.getValue(), e.getKey().equals(value)))
        .toList();
  }
}
