package org.staywright.form.table;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.staywright.part.Price;

/** Price breaks in one cell: {@code 1:14.20;10:12.90} is 14.20 each from one, 12.90 from ten. */
public final class PriceText {

  public static final String EXAMPLE = "1:14.20;10:12.90";

  /** Money to a hundredth of a cent. */
  private static final Pattern BREAK =
      Pattern.compile("\\s*(\\d{1,7})\\s*:\\s*(\\d{1,9}(?:\\.\\d{1,4})?)\\s*");

  private PriceText() {}

  public static String write(List<Price.Break> breaks) {
    return breaks.stream()
        .map(each -> each.from() + ":" + each.each().toPlainString())
        .collect(Collectors.joining(";"));
  }

  /**
   * The breaks, empty where the text is none: from the least sold, by rising quantity, above zero.
   */
  public static Optional<List<Price.Break>> read(String text) {
    List<Price.Break> breaks = new ArrayList<>();
    int last = 0;
    for (String part : text.split(";", -1)) {
      Matcher side = BREAK.matcher(part);
      if (!side.matches()) {
        return Optional.empty();
      }
      int from = Integer.parseInt(side.group(1));
      BigDecimal each = new BigDecimal(side.group(2));
      if (each.signum() == 0 || from <= last) {
        return Optional.empty();
      }
      breaks.add(new Price.Break(from, each));
      last = from;
    }
    return Optional.of(breaks);
  }
}
