package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Coded;
import org.staywright.unit.Unit;

/**
 * What is stamped on a tube, as far as it can be understood for sure: numbers with a unit, dates,
 * plain lengths. Everything else is asked about. Nobody's part numbers are known here, and no maker
 * is guessed.
 *
 * @param force N, null where none was read or several
 * @param madeIn "YYYY" or "YYYY-MM", null where none was read
 * @param understood piece by piece
 * @param asked pieces that could mean several things or nothing
 */
public record LabelReading(
    @Nullable Double force, @Nullable String madeIn, List<Piece> understood, List<Piece> asked) {

  /** What a piece of a label is, or what must be asked about it. */
  public enum Meaning implements Coded {
    FORCE,
    PRESSURE,
    LENGTH,
    DATE,
    THREAD,
    /** Which length is it? */
    WHICH_LENGTH,
    /** A number without a unit: force, length or neither? */
    PLAIN_NUMBER,
    /** A week or a month, and a year of two digits. */
    WEEK_OR_MONTH,
    /** A second force beside the first. */
    ANOTHER_FORCE,
    LETTERS
  }

  /**
   * @param text as stamped
   * @param meaning of it
   */
  public record Piece(String text, Meaning meaning) {}

  private static final String NUMBER = "(\\d{1,5}(?:[.,]\\d{1,2})?)";

  private static final Pattern PIECE =
      Pattern.compile(
          "(?<date>\\b(?:19|20)\\d\\d[-/.](?:0[1-9]|1[0-2])(?:[-/.]\\d\\d)?\\b"
              + "|\\b\\d{1,2}\\.(?:0?[1-9]|1[0-2])\\.(?:19|20)\\d\\d\\b"
              + "|\\b(?:0[1-9]|1[0-2])[-/.](?:19|20)\\d\\d\\b)"
              + "|(?<week>\\b\\d{1,2}/\\d\\d\\b)"
              + "|(?<thread>\\bM\\d{1,2}(?:x\\d(?:[.,]\\d+)?)?\\b)"
              + "|(?<force>\\b"
              + NUMBER
              + "\\s*(?<unit>daN|N|lbf|lbs?|kgf|kp)(?![\\p{L}]))"
              + "|(?<pressure>\\b"
              + NUMBER
              + "\\s*(?:bar|psi|MPa)\\b)"
              + "|(?<length>\\b"
              + NUMBER
              + "\\s*(?:mm|cm|in|\"))"
              + "|(?<year>\\b(?:19[6-9]|20[0-4])\\d\\b)"
              + "|(?<number>(?<![\\p{L}\\d-])\\d+(?:[.,]\\d+)?(?![\\p{L}\\d-]))"
              + "|(?<letters>[\\p{L}\\d][\\p{L}\\d-]*)",
          Pattern.CASE_INSENSITIVE);

  public LabelReading {
    understood = List.copyOf(understood);
    asked = List.copyOf(asked);
  }

  public static LabelReading of(String text) {
    List<Piece> understood = new ArrayList<>();
    List<Piece> asked = new ArrayList<>();
    Double force = null;
    String made = null;
    for (Matcher piece = PIECE.matcher(text); piece.find(); ) {
      String found = piece.group();
      if (piece.group("force") != null) {
        double newtons = newtons(found, piece.group("unit"));
        boolean first = force == null || Math.abs(newtons - force) < 0.03 * force;
        force = force == null ? Double.valueOf(newtons) : force;
        (first ? understood : asked)
            .add(new Piece(found, first ? Meaning.FORCE : Meaning.ANOTHER_FORCE));
      } else if (piece.group("date") != null || piece.group("year") != null) {
        made = made == null ? month(found) : made;
        understood.add(new Piece(found, Meaning.DATE));
      } else if (piece.group("week") != null) {
        asked.add(new Piece(found, Meaning.WEEK_OR_MONTH));
      } else if (piece.group("thread") != null) {
        understood.add(new Piece(found, Meaning.THREAD));
      } else if (piece.group("pressure") != null) {
        understood.add(new Piece(found, Meaning.PRESSURE));
      } else if (piece.group("length") != null) {
        asked.add(new Piece(found, Meaning.WHICH_LENGTH));
      } else if (piece.group("number") != null) {
        asked.add(new Piece(found, Meaning.PLAIN_NUMBER));
      } else {
        asked.add(new Piece(found, Meaning.LETTERS));
      }
    }
    return new LabelReading(force, made, understood, asked);
  }

  private static double newtons(String piece, String unit) {
    Matcher number = Pattern.compile(NUMBER).matcher(piece);
    if (!number.find()) {
      throw new IllegalStateException("no number in " + piece);
    }
    double value = Double.parseDouble(number.group(1).replace(',', '.'));
    return switch (unit.toLowerCase(java.util.Locale.ROOT)) {
      case "dan" -> 10 * value;
      case "lbf", "lb", "lbs" -> Unit.POUND_FORCE.si(value);
      case "kgf", "kp" -> Unit.KILOGRAM_FORCE.si(value);
      default -> value;
    };
  }

  private static String month(String date) {
    String[] parts = date.split("[-/.]");
    if (parts.length == 1) {
      return date;
    }
    boolean yearFirst = parts[0].length() == 4;
    String year = yearFirst ? parts[0] : parts[parts.length - 1];
    String month = yearFirst ? parts[1] : parts[parts.length - 2];
    return year + (month.length() == 1 ? "-0" : "-") + month;
  }
}
