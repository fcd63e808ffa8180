package org.staywright.document.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.staywright.document.Stocked;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Role;
import org.staywright.document.draw.Svg;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.unit.Unit;

class OverlayChartTest {

  @Test
  void namesBothCurvesOfEveryFit() {
    Job lid = Samples.lid();
    List<Fit> fits = Ranking.of(Stocked.RANGE, lid).fits().subList(0, OverlayChart.MOST);
    String svg = Svg.of(OverlayChart.of(lines(lid, fits, i -> 50), Stocked.ENGLISH));
    for (String name : List.of("A opening", "E opening", "A closing", "E closing", "limit 50")) {
      assertTrue(svg.contains(">" + name), name);
    }
    assertTrue(
        OverlayChart.of(lines(lid, fits, i -> 50 + i), Stocked.ENGLISH).shapes().stream()
            .noneMatch(shape -> shape.role() == Role.LIMIT));
  }

  @Test
  void saysThatItsCurvesAndNumbersAreNominal() {
    Job lid = Samples.lid();
    List<Fit> fits = Ranking.of(Stocked.RANGE, lid).fits().subList(0, 2);
    Drawing chart = OverlayChart.of(lines(lid, fits, i -> 50), Stocked.ENGLISH);
    assertTrue(chart.title().endsWith("nominal"), chart.title());
    assertTrue(chart.readings().up().name().contains("nominal"), chart.readings().up().name());
    double most = Arrays.stream(FitCurve.of(lid, fits.get(1)).nominal().open()).max().orElseThrow();
    String said =
        "B: nominal at most "
            + Stocked.ENGLISH.quantity(most, Unit.NEWTON, 0, RoundingMode.CEILING);
    assertTrue(chart.description().contains(said), chart.description());
  }

  private static List<OverlayChart.Line> lines(Job job, List<Fit> fits, IntUnaryOperator limit) {
    return IntStream.range(0, fits.size())
        .mapToObj(
            i ->
                OverlayChart.Line.hand(
                    "ABCDE".substring(i, i + 1),
                    FitCurve.of(job, fits.get(i)),
                    job.mechanism().movement(),
                    limit.applyAsInt(i)))
        .toList();
  }

  @Test
  void labelsThatAreFarApartStayWhereTheyAre() {
    assertArrayEquals(
        new double[] {1, 4, 9}, OverlayChart.apart(new double[] {1, 4, 9}, 0, 20), 1e-12);
  }

  @Test
  void labelsThatWouldCoverEachOtherSpreadAboutTheirMiddle() {
    assertArrayEquals(
        new double[] {3.75, 5, 6.25}, OverlayChart.apart(new double[] {5, 5, 5}, 0, 20), 1e-12);
  }

  @Test
  void labelsStayWithinTheFrame() {
    assertArrayEquals(
        new double[] {0, 1.25, 2.5}, OverlayChart.apart(new double[] {0, 0, 0}, 0, 20), 1e-12);
    assertArrayEquals(
        new double[] {18.75, 20}, OverlayChart.apart(new double[] {20, 20}, 0, 20), 1e-12);
  }

  @Test
  void labelsNeverCoverEachOther() {
    long seed = 20261125;
    System.out.println("labels of an overlay: seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      double[] wanted = random.doubles(2 + random.nextInt(9), 0, 20).sorted().toArray();
      double[] at = OverlayChart.apart(wanted, 0, 20);
      for (int j = 1; j < at.length; j++) {
        assertTrue(at[j] - at[j - 1] > 1.25 - 1e-9, "case " + i);
      }
      assertTrue(at[0] >= 0 && at[at.length - 1] <= 20 + 1e-9, "case " + i);
    }
  }
}
