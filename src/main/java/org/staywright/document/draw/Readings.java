package org.staywright.document.draw;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * The numbers that a chart draws: for the table behind it, for files, and for whoever reads it off.
 *
 * @param code of the chart, in addresses and names of files
 * @param along what runs along x
 * @param up what runs along y
 * @param series drawn curves and edges of bands
 * @param bands between two of them
 * @param levels lines across
 * @param stretches of x with something in common; none where nothing is told of any
 * @param marks places on curves that have something to tell
 */
public record Readings(
    String code,
    Measure along,
    Measure up,
    List<Series> series,
    List<Band> bands,
    List<Level> levels,
    List<Stretch> stretches,
    List<Mark> marks) {

  /** Places between which curves of different samples are read. */
  private static final int EVEN = 121;

  /**
   * What is measured along an axis.
   *
   * @param name with the unit that its reader sees
   * @param unit of the values, null for one that all readers share
   * @param decimals that tell values apart, in the metric unit
   */
  public record Measure(String name, Unit unit, int decimals) {

    /** A value in the unit that its reader sees. */
    public double shown(double value, Wording wording) {
      return unit == null ? value : wording.units().instead(unit).of(unit.si(value));
    }

    /** Decimals that tell as much in that unit. */
    public int decimals(Wording wording) {
      return unit == null ? decimals : wording.units().decimals(unit, decimals);
    }

    /** A value as a table holds it, "" for none. */
    public String text(double value, Wording wording) {
      return Double.isNaN(value) ? "" : wording.number(shown(value, wording), decimals(wording));
    }
  }

  /** How a series is drawn. */
  public enum Look {
    SOLID,
    DASHED,
    EDGE
  }

  /**
   * @param name of the curve
   * @param xs rising
   * @param ys one each
   */
  public record Series(String name, Role role, Look look, double[] xs, double[] ys) {

    /** Straight between two samples; NaN beyond them. */
    public double at(double x) {
      int last = xs.length - 1;
      if (x < xs[0] || x > xs[last]) {
        return Double.NaN;
      }
      int found = Arrays.binarySearch(xs, x);
      if (found >= 0) {
        return ys[found];
      }
      int next = -found - 1;
      double share = (x - xs[next - 1]) / (xs[next] - xs[next - 1]);
      return ys[next - 1] + share * (ys[next] - ys[next - 1]);
    }
  }

  /**
   * @param lower number of a series
   * @param upper number of a series
   */
  public record Band(Role role, int lower, int upper) {}

  /** A line across at a value, in words. */
  public record Level(String name, Role role, double value) {}

  /** From one place along x to another, in words. */
  public record Stretch(String name, Role role, double from, double to) {}

  /** A place, and what is said of it. */
  public record Mark(String name, Role role, double x, double y) {}

  public Readings {
    series = List.copyOf(series);
    bands = List.copyOf(bands);
    levels = List.copyOf(levels);
    stretches = List.copyOf(stretches);
    marks = List.copyOf(marks);
  }

  /** Where all series are read: at their samples where they share them, else at even steps. */
  public double[] places() {
    double[] first = series.get(0).xs();
    if (series.stream().allMatch(each -> Arrays.equals(each.xs(), first))) {
      return first;
    }
    double low = ends(0).min().orElseThrow();
    double high = ends(1).max().orElseThrow();
    double[] places = new double[EVEN];
    for (int i = 0; i < EVEN; i++) {
      places[i] = low + (high - low) * i / (EVEN - 1);
    }
    places[EVEN - 1] = high;
    return places;
  }

  private DoubleStream ends(int end) {
    return series.stream().mapToDouble(each -> each.xs()[end * (each.xs().length - 1)]);
  }

  /** Values of a series at those places; NaN where it has none. */
  public double[] values(Series of, double[] places) {
    return Arrays.stream(places).map(of::at).toArray();
  }

  /** Name of the stretch that a place lies in, "" for none. */
  public String stretch(double place) {
    return stretches.stream()
        .filter(each -> place >= each.from() && place <= each.to())
        .map(Stretch::name)
        .findFirst()
        .orElse("");
  }
}
