package org.staywright.fit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.part.Price;
import org.staywright.part.Range;
import org.staywright.spring.Cylinder;
import org.staywright.spring.GasSpring;

/** Ranges and parts at random for the tests of choosing; all invented. */
public final class RandomRange {

  private static final double[][] SIZES = {
    // rod, tube, bore mm, least and greatest force N, stroke mm, e, c mm, oil ml, friction N
    {6, 15, 12.6, 63, 400, 40, 250, 7, 52, 0.4, 8},
    {8, 18, 15.6, 100, 710, 60, 400, 8, 60, 0.7, 11},
    {10, 22, 19, 160, 1000, 80, 500, 9, 68, 1.2, 14},
  };

  private RandomRange() {}

  /** Springs and end fittings at random; limits drawn so tight that every rejection occurs. */
  public static Range of(Random random, int size) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      parts.add(randomPart(random, "T-" + (100000 + i)));
    }
    List<Fitting> fittings = new ArrayList<>();
    for (String thread : List.of("M5", "M6", "M8")) {
      for (int i = 0; i < 3; i++) {
        fittings.add(fitting(random, "B-" + thread + i, FittingType.BALL_SOCKET, thread));
      }
      if (!thread.equals("M5")) {
        fittings.add(fitting(random, "E-" + thread, FittingType.EYELET, thread));
      }
    }
    return Range.of(1, parts, fittings);
  }

  /** Any gas spring. */
  public static Part part(Random random) {
    return randomPart(random, "T-0001");
  }

  private static Part randomPart(Random random, String number) {
    double[] size = SIZES[random.nextInt(SIZES.length)];
    double stroke = between(random, size[5], size[6]) / 1000;
    double bore = size[2] / 1000;
    double force = between(random, size[3], size[4]);
    double oil = size[9] * 1e-6;
    String thread = size[0] == 6 ? "M5" : size[0] == 8 ? "M6" : "M8";
    return new Part(
        number,
        null,
        Family.GAS_SPRING,
        random.nextInt(3) == 0 ? Finish.STAINLESS : Finish.ZINC,
        new GasSpring(
            new Cylinder(
                size[0] / 1000,
                size[1] / 1000,
                bore,
                stroke,
                2 * stroke + size[8] / 1000,
                stroke + size[8] / 1000,
                size[10] + 0.02 * force,
                1.5,
                Math.PI / 4 * bore * bore * (stroke + size[7] / 1000) - oil,
                oil),
            force),
        Math.max(15, 0.05 * force),
        new Part.Ends(thread, thread),
        new Part.Damping(0, 0.6e-3, 2e-3, 4, 3),
        new Part.Limits(
            random.nextInt(9) == 0 ? 273.15 : 243.15,
            353.15,
            random.nextInt(9) == 0 ? 120e5 : 400e5),
        new Part.Wear(random.nextInt(9) == 0 ? 0.19 : 0.02, 1.5e-6),
        0.3,
        Mounting.ROD_DOWN,
        offer(random),
        List.of());
  }

  private static Fitting fitting(Random random, String number, FittingType type, String thread) {
    return new Fitting(
        number,
        null,
        type,
        Finish.ZINC,
        thread,
        between(random, 18, 30) / 1000,
        between(random, 600, 3000),
        Math.toRadians(between(random, 3, 18)),
        8e-3,
        0,
        0.02,
        offer(random));
  }

  private static Offer offer(Random random) {
    Price price =
        random.nextInt(20) == 0
            ? null
            : new Price(
                "EUR",
                LocalDate.of(2027, 6, 30),
                1,
                1,
                List.of(
                    new Price.Break(1, BigDecimal.valueOf(400 + random.nextInt(2000), 2)),
                    new Price.Break(3, BigDecimal.valueOf(300 + random.nextInt(100), 2))));
    return new Offer(price, random.nextInt(6), LocalDate.of(2026, 11, 20), random.nextInt(20));
  }

  private static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
