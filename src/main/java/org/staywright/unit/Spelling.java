package org.staywright.unit;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Units as people write them: symbols and signs here, words in the files of each language. */
final class Spelling {

  private static final Map<String, Unit> UNITS = new LinkedHashMap<>();

  static {
    for (Unit unit : Unit.values()) {
      UNITS.put(unit.symbol(), unit);
    }
    spelt(Unit.INCH, "\"", "″", "''", "in.");
    spelt(Unit.FOOT, "'", "′", "’");
    spelt(Unit.POUND_FORCE, "lbsf", "lbs-f", "lb-f");
    spelt(Unit.KILOGRAM_FORCE, "kg-f", "kp");
    spelt(Unit.NEWTON_METRE, "nm", "n m", "n*m", "n-m");
    spelt(Unit.POUND_FORCE_INCH, "lbf in", "lbf-in", "lbf*in", "lb·in", "lb-in", "in·lbf", "in-lb");
    spelt(Unit.POUND_FORCE_INCH, "in-lbf", "in lbf", "in·lb");
    spelt(Unit.POUND_FORCE_FOOT, "lbf ft", "lbf-ft", "lbf*ft", "lb·ft", "lb-ft", "ft-lb", "ft-lbf");
    spelt(Unit.KILOGRAM, "kgs");
    spelt(Unit.POUND, "lbs", "#", "lb.", "lbs.");
    spelt(Unit.CELSIUS, "c", "degc", "deg c", "° c");
    spelt(Unit.FAHRENHEIT, "f", "degf", "deg f", "° f");
    spelt(Unit.DEGREE, "deg");
    Stream.of(Language.values()).forEach(Spelling::words);
  }

  private static final List<String> LONGEST_FIRST =
      UNITS.keySet().stream().sorted(Comparator.comparing(String::length).reversed()).toList();

  private Spelling() {}

  /** {@code unit.foot=foot, feet}. */
  private static void words(Language language) {
    String name = "/wording/unit" + language.mark() + ".properties";
    Properties words = new Properties();
    try (Reader file =
        new InputStreamReader(
            Objects.requireNonNull(Spelling.class.getResourceAsStream(name), name),
            StandardCharsets.UTF_8)) {
      words.load(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    for (Unit unit : Unit.values()) {
      String ways = words.getProperty("unit." + unit.name().toLowerCase(Locale.ROOT));
      if (ways != null) {
        spelt(unit, ways.split(", "));
      }
    }
  }

  private static void spelt(Unit unit, String... ways) {
    for (String way : ways) {
      UNITS.put(way, unit);
    }
  }

  /** The spelling that a text holds at a place, the longest that is there. */
  static Optional<String> at(String text, int place) {
    return LONGEST_FIRST.stream()
        .filter(way -> text.regionMatches(true, place, way, 0, way.length()))
        .filter(way -> stands(text, place, place + way.length()))
        .findFirst();
  }

  /** Not a piece of a longer word. */
  private static boolean stands(String text, int from, int to) {
    return !letters(text, from - 1, from) && !letters(text, to - 1, to);
  }

  private static boolean letters(String text, int one, int other) {
    return one >= 0
        && other < text.length()
        && Character.isLetter(text.charAt(one))
        && Character.isLetter(text.charAt(other));
  }

  /**
   * What a spelling means where some dimension is wanted: a pound is a force where a force is asked
   * for, as its labels say it.
   */
  static @Nullable Unit meant(String way, Dimension wanted) {
    Unit unit = UNITS.get(way);
    return unit == Unit.POUND && wanted == Dimension.FORCE ? Unit.POUND_FORCE : unit;
  }

  /** Symbols of a dimension's units. */
  static String of(Dimension dimension) {
    return List.of(Unit.values()).stream()
        .filter(unit -> unit.dimension() == dimension)
        .map(Unit::symbol)
        .collect(Collectors.joining(" | "));
  }
}
