package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PartNumberTest {

  private static final String SIGNS = "023456789BCDFGHJKMNPQRSTVWXYZ";
  private static final int LAST = 29 * 29 * 29 * 29 * 29 - 1;

  @Test
  void everySerialNumberHasANumberOfItsOwn() {
    Set<String> seen = new HashSet<>();
    for (int serial = 0; serial < 100_000; serial++) {
      String number = PartNumber.of(serial);
      assertTrue(PartNumber.PATTERN.matcher(number).matches(), number);
      assertTrue(PartNumber.checks(number), number);
      assertTrue(seen.add(number), number);
    }
    assertTrue(seen.add(PartNumber.of(LAST)));
  }

  @Test
  void refusesSerialNumbersBeyondTheScheme() {
    assertThrows(IllegalArgumentException.class, () -> PartNumber.of(-1));
    assertThrows(IllegalArgumentException.class, () -> PartNumber.of(LAST + 1));
  }

  @Test
  void findsEveryWrongSign() {
    for (String number : some()) {
      for (int place : new int[] {0, 1, 2, 4, 5, 6}) {
        for (char sign : SIGNS.toCharArray()) {
          if (sign != number.charAt(place)) {
            StringBuilder wrong = new StringBuilder(number);
            wrong.setCharAt(place, sign);
            assertFalse(PartNumber.checks(wrong.toString()), number + " as " + wrong);
          }
        }
      }
    }
  }

  @Test
  void findsEverySwap() {
    for (String number : some()) {
      String signs = number.replace("-", "");
      for (int i = 0; i < signs.length(); i++) {
        for (int j = i + 1; j < signs.length(); j++) {
          StringBuilder swapped = new StringBuilder(signs);
          swapped.setCharAt(i, signs.charAt(j));
          swapped.setCharAt(j, signs.charAt(i));
          boolean same = signs.charAt(i) == signs.charAt(j);
          assertEquals(same, PartNumber.checks(swapped.insert(3, '-').toString()), number);
        }
      }
    }
  }

  @Test
  void refusesWhatIsNotOfTheScheme() {
    for (String other : new String[] {"", "-", "ABC", "023456-", "0234-56", "02l-456", "02I-456"}) {
      assertFalse(PartNumber.checks(other), other);
    }
  }

  private static String[] some() {
    long seed = 7;
    System.out.println("seed " + seed);
    return new Random(seed).ints(50, 0, LAST).mapToObj(PartNumber::of).toArray(String[]::new);
  }
}
