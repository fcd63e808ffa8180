package org.staywright.part;

import java.util.regex.Pattern;

/**
 * Part numbers: what any range may use, and the scheme of the sample range.
 *
 * <p>Any number of 4 to 16 capitals, digits and hyphens will do. The sample range numbers its parts
 * {@code XXX-XXC}: five signs that are a serial number in disguise, so that neighbours in the range
 * look nothing alike and nobody reads dimensions out of them, and a check sign. The 29 signs are
 * the digits without 1 and the consonants without L: nothing to mistake for another sign, and no
 * words. 29 is prime, so the weighted sum behind the check sign finds every single wrong sign and
 * every swap of two.
 */
public final class PartNumber {

  /** What any range may use. */
  public static final Pattern PATTERN = Pattern.compile("[A-Z0-9-]{4,16}");

  private static final String SIGNS = "023456789BCDFGHJKMNPQRSTVWXYZ";
  private static final int BASE = SIGNS.length();
  private static final int BODY = 5;
  private static final int GROUP = 3;

  /** How many serial numbers there are: 29⁵. */
  private static final long COUNT = 20_511_149;

  /** No multiple of 29, so that every serial number has a disguise of its own. */
  private static final long FACTOR = 12_676_603;

  private static final long SHIFT = 7_048_171;

  private PartNumber() {}

  /** The number of a serial number, 0 ≤ serial &lt; 29⁵. */
  public static String of(int serial) {
    if (serial < 0 || serial >= COUNT) {
      throw new IllegalArgumentException("serial number " + serial + " not in 0…" + (COUNT - 1));
    }
    long disguised = (serial * FACTOR + SHIFT) % COUNT;
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < BODY; i++) {
      body.append(SIGNS.charAt((int) (disguised % BASE)));
      disguised /= BASE;
    }
    return body.append(checkSign(body)).insert(GROUP, '-').toString();
  }

  /** True for a number of the sample range's scheme whose check sign is right. */
  public static boolean checks(String number) {
    if (number.length() != BODY + 2 || number.charAt(GROUP) != '-') {
      return false;
    }
    String signs = number.substring(0, GROUP) + number.substring(GROUP + 1);
    return signs.chars().allMatch(sign -> SIGNS.indexOf(sign) >= 0)
        && signs.charAt(BODY) == checkSign(signs.substring(0, BODY));
  }

  private static char checkSign(CharSequence body) {
    int sum = 0;
    for (int i = 0; i < body.length(); i++) {
      sum += (i + 2) * SIGNS.indexOf(body.charAt(i));
    }
    // Weight −1 for the check sign itself: the whole sum is a multiple of 29.
    return SIGNS.charAt(sum % BASE);
  }
}
