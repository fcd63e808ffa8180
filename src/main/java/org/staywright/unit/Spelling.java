package org.staywright.unit;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Units as people write them, in English and German. */
final class Spelling {

  private static final Map<String, Unit> UNITS = new LinkedHashMap<>();

  static {
    for (Unit unit : Unit.values()) {
      UNITS.put(unit.symbol(), unit);
    }
    spelt(Unit.MILLIMETRE, "millimetre", "millimetres", "millimeter", "millimeters");
    spelt(Unit.METRE, "metre", "metres", "meter", "meters");
    spelt(Unit.INCH, "inch", "inches", "zoll", "\"", "″", "''", "in.");
    spelt(Unit.FOOT, "foot", "feet", "fuß", "'", "′", "’");
    spelt(Unit.NEWTON, "newton", "newtons");
    spelt(Unit.POUND_FORCE, "lbsf", "lbs-f", "lb-f");
    spelt(Unit.KILOGRAM_FORCE, "kg-f", "kp");
    spelt(Unit.NEWTON_METRE, "nm", "n m", "n*m", "n-m");
    spelt(Unit.POUND_FORCE_INCH, "lbf in", "lbf-in", "lbf*in", "lb·in", "lb-in", "in·lbf", "in-lb");
    spelt(Unit.POUND_FORCE_INCH, "in-lbf", "in lbf", "in·lb");
    spelt(Unit.POUND_FORCE_FOOT, "lbf ft", "lbf-ft", "lbf*ft", "lb·ft", "lb-ft", "ft-lb", "ft-lbf");
    spelt(Unit.KILOGRAM, "kilo", "kilos", "kilogram", "kilograms", "kgs");
    spelt(Unit.GRAM, "gram", "grams", "gramm");
    spelt(Unit.POUND, "lbs", "pound", "pounds", "#", "lb.", "lbs.");
    spelt(Unit.OUNCE, "ounce", "ounces");
    spelt(Unit.CELSIUS, "c", "degc", "deg c", "° c");
    spelt(Unit.FAHRENHEIT, "f", "degf", "deg f", "° f");
    spelt(Unit.DEGREE, "deg", "degree", "degrees", "grad");
    spelt(Unit.PERCENT, "percent", "prozent");
  }

  private static final List<String> LONGEST_FIRST =
      UNITS.keySet().stream().sorted(Comparator.comparing(String::length).reversed()).toList();

  private Spelling() {}

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
