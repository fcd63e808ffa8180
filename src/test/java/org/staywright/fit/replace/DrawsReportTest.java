package org.staywright.fit.replace;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.staywright.Effort;
import org.staywright.Reports;
import org.staywright.fit.SampleRange;
import org.staywright.part.Range;

/**
 * Springs of the sample range, measured with errors and gaps, and found again; {@code
 * reports/replacements.md} tells it. Another run: -Dstaywright.seed=….
 */
class DrawsReportTest {

  private static final long USUAL = 20261125;
  private static final long SEED = Long.getLong("staywright.seed", USUAL);
  private static final int REPORTED = 2000;
  private static final int DRAWS = Reports.KEEP ? REPORTED : Effort.of(REPORTED, 400);
  private static final int BINS = 10;
  private static final int LEAST_IN_BIN = 100;

  /** Answers whose stated likelihood lies in one tenth. */
  private static final class Bin {
    private int entries;
    private int right;
    private double stated;

    void add(double likelihood, boolean is) {
      entries++;
      right += is ? 1 : 0;
      stated += likelihood;
    }

    double gap() {
      return Math.abs(stated - right) / entries;
    }
  }

  private static final int[] FOUND_AT = new int[21];
  private static final List<Bin> CALIBRATION = new ArrayList<>();
  private static int readings;
  private static int outside;

  @BeforeAll
  static void draw() {
    System.out.println("DrawsReportTest seed " + SEED);
    Range range = SampleRange.read();
    Random random = new Random(SEED);
    for (int i = 0; i < BINS; i++) {
      CALIBRATION.add(new Bin());
    }
    for (int i = 0; i < DRAWS; i++) {
      Draw draw = Draw.of(range, random);
      Replacements answer = Replacements.of(range, draw.old(), 20);
      readings += draw.old().sizes().size();
      outside += answer.matchesNothing() ? 1 : 0;
      FOUND_AT[place(answer, range.number(draw.row()))]++;
    }
  }

  /** Counted from 0; 20 for not at all. */
  private static int place(Replacements answer, String number) {
    int place = 20;
    for (int i = 0; i < answer.found().size(); i++) {
      Replacement one = answer.found().get(i);
      boolean is = one.part().number().equals(number) || one.alike().contains(number);
      int bin = Math.min(BINS - 1, (int) (one.likelihood() * BINS));
      CALIBRATION.get(bin).add(one.likelihood(), is);
      place = is ? i : place;
    }
    return place;
  }

  @Test
  void theTruePartIsAmongTheFirstFive() {
    assertTrue(within(5) >= 0.95, () -> "within five: " + within(5));
  }

  @Test
  void statedLikelihoodsComeTrueAsOftenAsStated() {
    assertTrue(calibrationError() <= 0.05, () -> "calibration error " + calibrationError());
    if (SEED == USUAL) {
      assertTrue(counted().size() >= 2, "too few bins to tell anything");
    }
  }

  @Test
  void likelihoodsSumToAtMostOne() {
    Range range = SampleRange.read();
    Random random = new Random(SEED + 1);
    for (int i = 0; i < 100; i++) {
      Replacements answer = Replacements.of(range, Draw.of(range, random).old(), 200);
      double sum = answer.found().stream().mapToDouble(Replacement::likelihood).sum();
      assertTrue(sum + answer.outside() <= 1 + 1e-9, "sum " + sum);
    }
  }

  @Test
  void theReportIsAsItIsKept() throws IOException {
    // Kept is what the usual seed gives, and all the draws.
    if (SEED == USUAL && DRAWS == REPORTED) {
      Reports.hold("replacements.md", report());
    }
  }

  private static double within(int places) {
    int found = 0;
    for (int i = 0; i < places; i++) {
      found += FOUND_AT[i];
    }
    return (double) found / DRAWS;
  }

  private static List<Bin> counted() {
    return CALIBRATION.stream().filter(bin -> bin.entries >= LEAST_IN_BIN).toList();
  }

  /** Mean gap between stated and true over the bins that are full enough, weighted by entries. */
  private static double calibrationError() {
    double entries = counted().stream().mapToInt(bin -> bin.entries).sum();
    return counted().stream().mapToDouble(bin -> bin.gap() * bin.entries / entries).sum();
  }

  /** The same with every bin counted alike: harder, as the lowest holds most entries. */
  private static double evenCalibrationError() {
    return counted().stream().mapToDouble(Bin::gap).average().orElse(1);
  }

  private static String report() {
    StringBuilder text = new StringBuilder();
    text.append(
        """
        # Replacements found again

        Written by `mvn test -Preports`, held by `DrawsReportTest`; do not edit. Springs of the sample range
        are drawn by a fixed seed and measured as a fitter would: a careful one leaves four fields in ten
        out, a careless one eight; every reading is off by a normal error of its stated half-width, one to
        four times what calliper and tape allow at their best; what the flap leaves to spare is 2 to 25 mm,
        evenly. At least two sizes are left. The answer counts as right
        where it is the part drawn, or one alike in all that was measured.

        """);
    text.append(String.format(Locale.ROOT, "Seed %d, %d draws, ", SEED, DRAWS));
    text.append(String.format(Locale.ROOT, "%.1f sizes each.%n%n", (double) readings / DRAWS));
    text.append("| the right answer comes | share of draws | needed |\n|---|---:|---:|\n");
    row(text, "first", within(1), "");
    row(text, "among the first three", within(3), "");
    row(text, "among the first five", within(5), "≥ 95 %");
    row(text, "among the first twenty", within(20), "");
    row(text, "after “none of the range”", (double) outside / DRAWS, "");
    text.append("\n| stated likelihood | answers | stated, mean | true | gap |\n");
    text.append("|---|---:|---:|---:|---:|\n");
    for (int i = 0; i < BINS; i++) {
      Bin bin = CALIBRATION.get(i);
      if (bin.entries > 0) {
        text.append(
            String.format(
                Locale.ROOT,
                "| %.1f to %.1f | %d | %.3f | %.3f | %.3f |%n",
                (double) i / BINS,
                (i + 1.0) / BINS,
                bin.entries,
                bin.stated / bin.entries,
                (double) bin.right / bin.entries,
                bin.gap()));
      }
    }
    text.append(
        String.format(
            Locale.ROOT,
            "%nExpected calibration error over the bins with at least %d answers: %.3f (needed: ≤ 0.05);"
                + " with every bin counted alike: %.3f.%n",
            LEAST_IN_BIN,
            calibrationError(),
            evenCalibrationError()));
    return text.toString();
  }

  private static void row(StringBuilder text, String what, double share, String needed) {
    text.append(String.format(Locale.ROOT, "| %s | %.1f %% | %s |%n", what, 100 * share, needed));
  }
}
