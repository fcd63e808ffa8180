package org.staywright.fit.rank;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Path;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.SpringState;
import org.staywright.part.Column;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;

/**
 * Rejects by the columns alone, in the order of {@link Rejection}, before any force is computed.
 */
public final class Sieve {

  /** Either a survivor or the first reason against it. */
  record Result(@Nullable Rejection rejection, @Nullable Survivor survivor) {

    Survivor survived() {
      return Objects.requireNonNull(survivor);
    }
  }

  /**
   * What a row brings along wherever it is hung: its first end fittings and its lengths with them;
   * or why it is out.
   */
  public record Outfit(
      @Nullable Rejection rejection,
      @Nullable Fitting rodFitting,
      @Nullable Fitting tubeFitting,
      double shortest,
      double longest,
      double gasLeft) {

    /** On the rod of what is not out. */
    public Fitting rod() {
      return Objects.requireNonNull(rodFitting);
    }

    /** On the tube of what is not out. */
    public Fitting tube() {
      return Objects.requireNonNull(tubeFitting);
    }
  }

  /** The end fittings that go with a pair of threads; null where there are none. */
  private record Pair(@Nullable Fitting rod, @Nullable Fitting tube) {}

  private final Job job;
  private final Range range;
  private final @Nullable Paths paths;
  private final Map<Part.Ends, Pair> pairs = new HashMap<>();
  private final Map<Double, Path> pathOf = new HashMap<>();
  private final double[] compressed;
  private final double[] extended;
  private final double[] coldest;
  private final double[] hottest;
  private final double[] perYear;
  private final double[] perCycle;

  /**
   * @param paths null for who asks for {@link #outfit} only
   */
  public Sieve(Job job, Range range, @Nullable Paths paths) {
    this.job = job;
    this.range = range;
    this.paths = paths;
    compressed = range.column(Column.COMPRESSED_LENGTH);
    extended = range.column(Column.EXTENDED_LENGTH);
    coldest = range.column(Column.COLDEST);
    hottest = range.column(Column.HOTTEST);
    perYear = range.column(Column.LOSS_PER_YEAR);
    perCycle = range.column(Column.LOSS_PER_CYCLE);
  }

  /** Stock depends on the count and comes after family and finish, before all the rest. */
  boolean shelfFails(@Nullable Rejection other, int row, int count) {
    boolean asked = other != Rejection.FAMILY && other != Rejection.FINISH;
    return asked && job.filters().inStockOnly() && range.stock(row) < count;
  }

  Result sift(int row) {
    Outfit outfit = outfit(row);
    if (outfit.rejection() != null) {
      return out(outfit.rejection());
    }
    double longest = outfit.longest();
    Paths all = Objects.requireNonNull(paths);
    Path path = all.shared() ? all.of(longest) : pathOf.computeIfAbsent(longest, all::of);
    Rejection misfit = path.misfit(job.requirements(), outfit.shortest(), longest);
    if (misfit != null) {
      return out(misfit);
    }
    if (outfit.gasLeft() < Assessment.LEAST_GAS) {
      return out(Rejection.AGEING);
    }
    return new Result(
        null,
        new Survivor(
            row, outfit.rod(), outfit.tube(), outfit.shortest(), longest, outfit.gasLeft(), path));
  }

  /** What can be told without any geometry. */
  public Outfit outfit(int row) {
    if (!job.filters().families().contains(range.family(row))) {
      return bare(Rejection.FAMILY);
    }
    if (job.filters().finish() != null && job.filters().finish() != range.finish(row)) {
      return bare(Rejection.FINISH);
    }
    if (job.conditions().coldest() < coldest[row] || job.conditions().hottest() > hottest[row]) {
      return bare(Rejection.TEMPERATURE);
    }
    Pair pair = pairs.computeIfAbsent(range.ends(row), this::pair);
    if (pair.rod == null || pair.tube == null) {
      return bare(Rejection.FITTING);
    }
    // The same order of additions as in the assessment: the last digit decides at a bound.
    double fittings = pair.rod.lengthToCentre() + pair.tube.lengthToCentre();
    return new Outfit(
        null,
        pair.rod,
        pair.tube,
        compressed[row] + fittings,
        extended[row] + fittings,
        SpringState.gasLeft(job.conditions(), new Part.Wear(perYear[row], perCycle[row])));
  }

  private static Outfit bare(Rejection rejection) {
    return new Outfit(rejection, null, null, 0, 0, 0);
  }

  private Pair pair(Part.Ends ends) {
    return new Pair(
        first(FittingChoice.of(range.fittings(), job.rodEnd(), ends.rod())),
        first(FittingChoice.of(range.fittings(), job.tubeEnd(), ends.tube())));
  }

  private static @Nullable Fitting first(List<Fitting> fittings) {
    return fittings.isEmpty() ? null : fittings.get(0);
  }

  private static Result out(Rejection rejection) {
    return new Result(rejection, null);
  }
}
