package org.staywright.catalog;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.staywright.part.Offer;
import org.staywright.part.Price;

/** Prices, stock and lead times out of thin air, but always the same ones for a part number. */
final class Invented {

  private static final LocalDate STOCK_DATE = LocalDate.of(2026, 11, 20);
  private static final LocalDate VALID_UNTIL = LocalDate.of(2027, 6, 30);
  private static final long SEED = 20_261_120;
  private static final int[] LEAD_TIMES = {3, 5, 8, 10, 15, 20, 30};

  private Invented() {}

  /** A spring: price rises with steel and force, special springs wait longer. */
  static Offer spring(String number, double massKg, double forceN, boolean damped, boolean steel) {
    SplittableRandom chance = chance(number);
    double each = 6.2 + 11 * massKg + 0.32 * Math.sqrt(forceN);
    each *= (damped ? 1.07 : 1) * (steel ? 2.15 : 1) * chance.nextDouble(0.96, 1.04);
    List<Price.Break> breaks = new ArrayList<>();
    breaks.add(step(1, each, 1));
    breaks.add(step(10, each, 0.92));
    breaks.add(step(50, each, 0.85));
    if (massKg < 1) {
      breaks.add(step(100, each, 0.79));
    }
    Price price = new Price("EUR", VALID_UNTIL, 1, 1, breaks);
    int most = massKg < 0.3 ? 160 : massKg < 1 ? 80 : 24;
    int shelf = chance.nextInt(100) < (steel ? 45 : 22) ? 0 : 1 + chance.nextInt(most);
    int longest = steel || massKg > 1 ? LEAD_TIMES.length : LEAD_TIMES.length - 2;
    return new Offer(price, shelf, STOCK_DATE, LEAD_TIMES[chance.nextInt(longest)]);
  }

  /**
   * A part of another family: so many times what a plain gas spring of its mass and force costs.
   */
  static Offer offer(String number, double massKg, double forceN, double dear) {
    SplittableRandom chance = chance(number);
    double each = dear * (6.2 + 11 * massKg + 0.32 * Math.sqrt(forceN));
    each *= chance.nextDouble(0.96, 1.04);
    List<Price.Break> breaks =
        List.of(step(1, each, 1), step(10, each, 0.91), step(50, each, 0.84));
    int shelf = chance.nextInt(100) < 35 ? 0 : 1 + chance.nextInt(60);
    int wait = LEAD_TIMES[chance.nextInt(LEAD_TIMES.length)];
    return new Offer(new Price("EUR", VALID_UNTIL, 1, 1, breaks), shelf, STOCK_DATE, wait);
  }

  /** A fitting: small ones only by the bag. */
  static Offer fitting(String number, double basePrice, int pack, boolean steel) {
    SplittableRandom chance = chance(number);
    double each = basePrice * (steel ? 2.4 : 1) * chance.nextDouble(0.96, 1.04);
    List<Price.Break> breaks =
        List.of(step(1, each, 1), step(10, each, 0.9), step(50, each, 0.8), step(100, each, 0.72));
    Price price = new Price("EUR", VALID_UNTIL, pack, pack, breaks);
    int shelf = chance.nextInt(100) < 8 ? 0 : pack * (1 + chance.nextInt(600 / pack));
    return new Offer(price, shelf, STOCK_DATE, LEAD_TIMES[chance.nextInt(4)]);
  }

  private static SplittableRandom chance(String number) {
    return new SplittableRandom(SEED ^ number.hashCode() * 0x9E3779B97F4A7C15L);
  }

  /** Money to five cents from one euro up, to the cent below. */
  private static Price.Break step(int from, double each, double share) {
    BigDecimal unit = new BigDecimal(each * share >= 1 ? "0.05" : "0.01");
    BigDecimal price =
        BigDecimal.valueOf(each * share).divide(unit, 0, RoundingMode.HALF_UP).multiply(unit);
    return new Price.Break(from, price.setScale(2));
  }
}
