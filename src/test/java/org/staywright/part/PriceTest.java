package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceTest {

  private static final Price PRICE =
      new Price(
          "EUR",
          LocalDate.of(2027, 6, 30),
          1,
          1,
          List.of(
              new Price.Break(1, new BigDecimal("14.20")),
              new Price.Break(10, new BigDecimal("12.80")),
              new Price.Break(50, new BigDecimal("11.05"))));

  @ParameterizedTest
  @CsvSource({
    "1, 14.20",
    "2, 14.20",
    "9, 14.20",
    "10, 12.80",
    "49, 12.80",
    "50, 11.05",
    "9999, 11.05"
  })
  void fallsAtItsBreaks(int quantity, BigDecimal each) {
    assertEquals(each, PRICE.each(quantity));
  }
}
