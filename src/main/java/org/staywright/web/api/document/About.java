package org.staywright.web.api.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.job.Ask;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Rejection;
import org.staywright.form.job.JobShape;
import org.staywright.mechanism.Mechanism.Movement;
import org.staywright.wording.FigureText;
import org.staywright.wording.Wording;

/**
 * What the document says of a field: of figures and requirements what their tables call them, then
 * whatever more there is to say.
 */
final class About {

  private static final Wording WORDING = Wording.english();
  private static final Map<String, Movement> LOADS = JobShape.loads();
  private static final Map<String, String> TABLES = tables();

  private About() {}

  /** Null where nothing is to be said. What is a job is told like one, also a saved one. */
  static String of(String object, String field) {
    String own = of(object + '.' + field);
    return own == null ? of(object.replaceFirst("^.*?-", "") + '.' + field) : own;
  }

  private static String of(String place) {
    List<String> parts = new ArrayList<>();
    if (TABLES.containsKey(place)) {
      parts.add(TABLES.get(place) + '.');
    }
    String key = "api.about." + place;
    if (WORDING.knows(key)) {
      parts.add(WORDING.text(key));
    }
    return parts.isEmpty() ? null : String.join(" ", parts);
  }

  /** By shape and field. */
  private static Map<String, String> tables() {
    Map<String, String> told = new HashMap<>();
    for (Figure figure : Figure.values()) {
      for (Movement kind : Movement.values()) {
        String name = figure.name(kind);
        // A member of an object stands in a shape of its own.
        told.put(name.contains(".") ? name : "figures." + name, of(figure, name));
      }
    }
    for (Criterion criterion : Criterion.values()) {
      criterion.asks().forEach(ask -> told.put("requirements." + ask.field(), of(criterion, ask)));
    }
    told.put("blocker.code", codes());
    for (Rejection reason : Rejection.values()) {
      told.put("rejected." + reason.code(), WORDING.text("fit.rejection." + reason.code()));
    }
    return told;
  }

  private static String of(Figure figure, String name) {
    return labels(
        code -> figure.concerns(code) && figure.name(LOADS.get(code)).equals(name),
        words -> words.label(figure, null));
  }

  private static String of(Criterion criterion, Ask ask) {
    String asked = WORDING.text(ask.flag() ? "api.asked.yes" : "api.asked.number");
    return labels(criterion::concerns, words -> words.label(criterion))
        + ": "
        + WORDING.text("fit.criterion." + criterion.sense().code(), asked);
  }

  /** What something is called, of each load in its words. */
  private static String labels(Predicate<String> concerned, Function<FigureText, String> label) {
    Map<String, List<String>> loads = new LinkedHashMap<>();
    for (String code : LOADS.keySet()) {
      if (concerned.test(code)) {
        String words = label.apply(FigureText.in(WORDING.about(code)));
        loads.computeIfAbsent(words, any -> new ArrayList<>()).add(code);
      }
    }
    return loads.entrySet().stream()
        .map(each -> WORDING.text("api.of-load", String.join(", ", each.getValue()), each.getKey()))
        .collect(Collectors.joining("; "));
  }

  /** Every code of what can be missed, with what it stands for and its unit. */
  private static String codes() {
    return Stream.of(Criterion.values())
        .map(
            each ->
                WORDING.text(
                    "api.code", each.code(), FigureText.in(WORDING).label(each), units(each)))
        .collect(Collectors.joining("; "));
  }

  private static String units(Criterion criterion) {
    return Stream.of(Movement.values())
        .map(criterion::unit)
        .map(unit -> unit == null ? WORDING.text("api.plain") : unit.symbol())
        .distinct()
        .collect(Collectors.joining(" | "));
  }
}
