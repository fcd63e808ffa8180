package org.staywright.fit.replace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.job.FittingChoice;
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.part.Range;

/** The pairs of end fittings that an old spring may have carried, by the threads of a part. */
final class Ends {

  /** Common practice where nothing is known: what most flaps hang on. No source. */
  private static final FittingWish USUAL = new FittingWish(FittingType.BALL_SOCKET, null);

  /**
   * One pair on the threads of a part.
   *
   * @param reach both fittings from shoulder to centre, m
   * @param log of the likelihood of the ball that was measured
   */
  record Pair(Fitting rod, Fitting tube, double reach, double log) {}

  /**
   * What goes on the threads of a part.
   *
   * @param asWished whether both ends can have what the old spring had
   * @param pairs each as likely as the other before anything was measured, the usual one first
   * @param reaches each once, m
   * @param logs of the likelihood of the pairs of a reach together
   */
  record Options(boolean asWished, List<Pair> pairs, double[] reaches, double[] logs) {

    static Options of(boolean asWished, List<Pair> pairs) {
      Map<Double, Double> shares = new TreeMap<>();
      double each = -Math.log(pairs.size());
      for (Pair pair : pairs) {
        double log = pair.log() + each;
        shares.merge(pair.reach(), log, (a, b) -> Normal.logSum(new double[] {a, b}));
      }
      return new Options(
          asWished,
          List.copyOf(pairs),
          shares.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
          shares.values().stream().mapToDouble(Double::doubleValue).toArray());
    }
  }

  private final Range range;
  private final Measurements old;
  private final Map<Part.Ends, Options> known = new HashMap<>();

  Ends(Range range, Measurements old) {
    this.range = range;
    this.old = old;
  }

  Options of(int row) {
    return known.computeIfAbsent(range.ends(row), this::options);
  }

  private Options options(Part.Ends threads) {
    List<Fitting> rods = wished(old.rodEnd(), threads.rod());
    List<Fitting> tubes = wished(old.tubeEnd(), threads.tube());
    boolean asWished = !rods.isEmpty() && !tubes.isEmpty();
    List<Pair> pairs = new ArrayList<>();
    for (Fitting rod : rods.isEmpty() ? any(threads.rod()) : rods) {
      for (Fitting tube : tubes.isEmpty() ? any(threads.tube()) : tubes) {
        pairs.add(
            new Pair(rod, tube, rod.lengthToCentre() + tube.lengthToCentre(), ball(rod, tube)));
      }
    }
    return Options.of(asWished, pairs);
  }

  /** Of the two ends the one whose ball is nearer was measured; no ball at all is far off. */
  private double ball(Fitting rod, Fitting tube) {
    return old.ball() == null
        ? 0
        : Math.max(
            old.ball().logDensity(rod.ballDiameter()), old.ball().logDensity(tube.ballDiameter()));
  }

  private List<Fitting> wished(@Nullable FittingWish wish, String thread) {
    return wish == null ? any(thread) : suiting(wish, thread);
  }

  /** Every kind, the usual one in front. */
  private List<Fitting> any(String thread) {
    return Stream.concat(
            suiting(USUAL, thread).stream(),
            Stream.of(FittingType.EYELET, FittingType.CLEVIS)
                .flatMap(type -> suiting(new FittingWish(type, null), thread).stream()))
        .toList();
  }

  private List<Fitting> suiting(FittingWish wish, String thread) {
    return thread == null ? List.of() : FittingChoice.of(range.fittings(), wish, thread);
  }
}
