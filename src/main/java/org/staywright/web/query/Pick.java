package org.staywright.web.query;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part and how many of it, as a button sends them: {@code 2xSW-1001-7}, with an exclamation mark
 * behind it where what it misses was shown.
 *
 * @param count of equal springs
 * @param partNumber of the spring
 * @param evenIfMisfit whether it is wanted although it does not fit
 */
public record Pick(int count, String partNumber, boolean evenIfMisfit) {

  private static final Pattern SPELLING = Pattern.compile("([1-8])x([A-Z0-9-]{4,16})(!?)");

  public static Optional<Pick> read(String text) {
    Matcher matcher = SPELLING.matcher(text == null ? "" : text);
    return matcher.matches()
        ? Optional.of(
            new Pick(
                Integer.parseInt(matcher.group(1)), matcher.group(2), !matcher.group(3).isEmpty()))
        : Optional.empty();
  }

  /** As the fields of a choice. */
  public Map<String, List<String>> values() {
    return Map.of(
        "partNumber", List.of(partNumber),
        "count", List.of(Integer.toString(count)),
        "evenIfMisfit", List.of(Boolean.toString(evenIfMisfit)));
  }

  @Override
  public String toString() {
    return count + "x" + partNumber + (evenIfMisfit ? "!" : "");
  }
}
