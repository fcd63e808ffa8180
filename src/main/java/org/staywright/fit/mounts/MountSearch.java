package org.staywright.fit.mounts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.staywright.fit.assess.Criteria;
import org.staywright.fit.assess.Path;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Screening;
import org.staywright.fit.rank.Standing;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Travel;
import org.staywright.part.Range;

/**
 * Finds mounts and stock part together: pairs of mounts spread evenly over the zones and looked at
 * roughly with every part that spans them, then the most promising moved to where they do best. The
 * same seed gives the same answer, on any number of cores; stopped early, it gives what it has.
 */
public final class MountSearch {

  /** Pairs looked at for a range of the size of ours; fewer where each costs more. */
  private static final int PAIRS = 1 << 14;

  private static final int FEWEST_PAIRS = 1 << 9;
  private static final int SLOTS = 3000;

  /** Above this many candidates the regions are not told apart: memory. */
  private static final int MANY = 1 << 15;

  private static final int CHUNKS = 4;
  private static final int NARROWING = 1024;
  private static final int ROUNDS = 8;

  private static final int SHORT = 60;
  private static final int LONG = 240;
  private static final int POLISHED = 12;
  private static final int SCREENED = 3;
  private static final int NEAR = 3;

  /** Least first step of a refinement, as a share of the zones. */
  private static final double FINEST = 0.01;

  /** Places at which the foremost candidates are looked for with cheaper end fittings. */
  private static final int COMBED = 512;

  /** Steps between two reports of progress. */
  private static final int TOLD = 64;

  private final Range range;
  private final Job job;
  private final Zones zones;
  private final long seed;
  private final Progress progress;
  private final UsableParts shelf;
  private final AtomicInteger done = new AtomicInteger();
  private SobolPoints spread;
  private volatile int total;
  private volatile boolean stopped;

  private MountSearch(Range range, Job job, Zones zones, long seed, Progress progress) {
    this.range = range;
    this.job = job.at(zones.middle());
    this.zones = zones;
    this.seed = seed;
    this.progress = progress;
    shelf = new UsableParts(this.job, range);
    int size = Math.max(1, shelf.size());
    int pairs = Math.max(FEWEST_PAIRS, (int) Math.min(PAIRS, (long) PAIRS * SLOTS / size));
    int dimension = zones.free();
    spread = SobolPoints.of(dimension, pairs >> (2 * Math.max(0, 3 - dimension)), seed);
  }

  /**
   * @param job its mechanism hangs on mounts; where they are now does not matter
   * @param progress where it says stop, the answer is what has been found until then
   */
  public static Found of(Range range, Job job, Zones zones, long seed, Progress progress) {
    MountSearch search = new MountSearch(range, job, zones, seed, progress);
    Found found = search.found();
    // What was looked at since it was told last.
    progress.goOn(Math.min(search.done.get(), search.total), search.total);
    return found;
  }

  private Found found() {
    if (shelf.size() == 0) {
      return Found.nothing(0, Obstacle.of(Obstacle.Code.NO_PART));
    }
    total = expected(Start.MOST);
    Obstacle obstacle = narrow();
    if (obstacle != null) {
      return Found.nothing(looked(), obstacle);
    }
    List<Start> starts = Start.of(job, shelf, spread, look());
    total = expected(starts.size());
    Variety variety = new Variety(job, zones);
    List<PlacedCandidate> places = variety.ordered(refined(starts, variety));
    if (places.isEmpty()) {
      return Found.nothing(looked(), obstacle(Obstacle.Code.STRENGTH));
    }
    boolean fits = places.get(0).fits();
    List<PlacedCandidate> shown =
        variety.picked(
            places.stream().filter(place -> place.fits() == fits).toList(),
            fits ? Variety.MOST : NEAR);
    List<Arrangement> arrangements = variety.arranged(range, shown);
    return fits
        ? new Found(looked(), arrangements, List.of(), null)
        : new Found(looked(), List.of(), arrangements, obstacle(Obstacle.Code.REQUIREMENTS));
  }

  /** Steps in all, about. */
  private int expected(int starts) {
    return spread.size() + starts * SHORT + (POLISHED + SCREENED) * LONG;
  }

  /** Pairs looked at: they come before all else. */
  private int looked() {
    return Math.min(done.get(), spread.size());
  }

  /** Who was stopped cannot say what stands in the way. */
  private Obstacle obstacle(Obstacle.Code code) {
    return Obstacle.of(stopped ? Obstacle.Code.STOPPED : code);
  }

  /** Draws the box in to where some part spans; what stands in the way where none does. */
  private @Nullable Obstacle narrow() {
    CoarseSearch coarse = new CoarseSearch(job, zones, shelf, 0);
    for (int round = 0; ; round++) {
      int points = Math.min(NARROWING, spread.size());
      double[] gaps = IntStream.range(0, points).mapToDouble(i -> leastGap(coarse, i)).toArray();
      int[] order =
          IntStream.range(0, points)
              .filter(i -> gaps[i] < Double.POSITIVE_INFINITY)
              .boxed()
              .sorted(Comparator.comparingDouble(i -> gaps[i]))
              .mapToInt(i -> i)
              .toArray();
      if (order.length == 0) {
        return Obstacle.of(Obstacle.Code.NO_PLACE);
      }
      int spanning = (int) IntStream.of(order).filter(i -> gaps[i] == 0).count();
      boolean last = round == ROUNDS || points < 16;
      if (spanning > points / 10 || last && gaps[order[0]] <= Path.FAR) {
        return null;
      }
      if (last) {
        return obstacle(coarse, order[0]);
      }
      int kept = Math.min(order.length, Math.max(spanning, points / 32));
      spread = spread.around(IntStream.of(order).limit(kept).toArray());
    }
  }

  private double leastGap(CoarseSearch coarse, int pair) {
    Travel travel = coarse.travel(zones.at(spread.point(pair)));
    return travel == null
        ? Double.POSITIVE_INFINITY
        : shelf.racks.stream().mapToDouble(rack -> coarse.gap(rack, travel)).min().orElseThrow();
  }

  private Obstacle obstacle(CoarseSearch coarse, int pair) {
    Travel travel = Objects.requireNonNull(coarse.travel(zones.at(spread.point(pair))));
    UsableParts.Rack rack =
        shelf.racks.stream()
            .min(Comparator.comparingDouble(each -> coarse.gap(each, travel)))
            .orElseThrow();
    double shortest = travel.shortest() - job.requirements().compressedReserve();
    double longest = travel.longest() + job.requirements().extendedReserve();
    if (rack.compressed() <= shortest) {
      return new Obstacle(Obstacle.Code.MOUNTS_TOO_FAR, longest, rack.extended());
    }
    return rack.extended() >= longest
        ? new Obstacle(Obstacle.Code.MOUNTS_TOO_NEAR, rack.compressed(), shortest)
        : new Obstacle(
            Obstacle.Code.TOO_MUCH_STROKE, longest - shortest, rack.extended() - rack.compressed());
  }

  /** Looks at every pair, in chunks that run side by side. */
  private CoarseSearch look() {
    int regions = shelf.size() * job.springCounts().size() > MANY ? 1 : spread.regions();
    List<CoarseSearch> chunks =
        IntStream.range(0, CHUNKS).parallel().mapToObj(i -> chunk(i, regions)).toList();
    CoarseSearch all = chunks.get(0);
    chunks.subList(1, CHUNKS).forEach(all::merge);
    return all;
  }

  private CoarseSearch chunk(int number, int regions) {
    CoarseSearch coarse = new CoarseSearch(job, zones, shelf, regions);
    for (int pair = number; pair < spread.size() && !stopped; pair += CHUNKS) {
      tick();
      Mounts mounts = zones.at(spread.point(pair));
      coarse.look(pair, regions == 1 ? 0 : spread.region(pair), mounts);
    }
    return coarse;
  }

  /** The starts moved a little, the best of them as far as it pays. */
  private List<PlacedCandidate> refined(List<Start> starts, Variety variety) {
    double step = Math.max(FINEST, spread.width() * spread.spacing());
    List<PlacedCandidate> places = new ArrayList<>(refined(starts, step, SHORT));
    if (stopped) {
      return places;
    }
    List<PlacedCandidate> ordered = variety.ordered(places);
    List<PlacedCandidate> promising = new ArrayList<>(variety.picked(ordered, Variety.MOST));
    ordered.stream()
        .filter(place -> !promising.contains(place))
        .limit(Math.max(0, POLISHED - promising.size()))
        .toList()
        .forEach(promising::add);
    places.addAll(refined(starts(promising), step, LONG));
    if (stopped) {
      return places;
    }
    List<Start> others = others(variety.ordered(places).stream().limit(SCREENED).toList());
    places.addAll(refined(others, step, LONG));
    places.addAll(refined(cheaper(variety.ordered(places)), step, LONG));
    return places;
  }

  private List<PlacedCandidate> refined(List<Start> starts, double step, int evaluations) {
    return IntStream.range(0, starts.size())
        .parallel()
        .mapToObj(
            i -> {
              Start start = starts.get(i);
              Refinement here =
                  new Refinement(job, range, zones, start.row(), start.count(), this::tick);
              return stopped
                  ? here.at(start.share())
                  : here.from(start.share(), step, evaluations, seed + i);
            })
        .toList();
  }

  private static List<Start> starts(List<PlacedCandidate> places) {
    return places.stream()
        .map(place -> new Start(place.row(), place.count(), place.share()))
        .toList();
  }

  /** The candidate that the whole range has for the best places, where it is another. */
  private List<Start> others(List<PlacedCandidate> places) {
    return places.stream()
        .filter(PlacedCandidate::fits)
        .flatMap(
            place -> {
              Screening screening = new Screening(job.at(place.mounts()), range);
              Standing standing = new Standing(job, screening.fits(), screening.near());
              return screening.fits().stream()
                  .min(standing.order())
                  .filter(best -> best.row() != place.row() || best.count() != place.count())
                  .map(best -> new Start(best.row(), best.count(), place.share()))
                  .stream();
            })
        .toList();
  }

  /**
   * The foremost candidates where less demanding places let cheaper end fittings do, as near to
   * fitting as can be: no slope leads there. Nothing where cost does not rank.
   */
  private List<Start> cheaper(List<PlacedCandidate> places) {
    Objective aim = new Objective(job, Criteria.of(job));
    return places.stream()
        .filter(place -> place.fits() && aim.cost(place.judged()) > 0)
        .limit(SCREENED)
        .flatMap(
            place -> {
              Refinement there =
                  new Refinement(job, range, zones, place.row(), place.count(), this::tick);
              double cost = aim.cost(place.judged());
              return IntStream.range(0, Math.min(COMBED, spread.size()))
                  .parallel()
                  .mapToObj(i -> there.at(spread.point(i)))
                  .filter(each -> each.fit() != null && aim.cost(each.judged()) < cost)
                  .min(
                      Comparator.comparingDouble(PlacedCandidate::value)
                          .thenComparing(each -> each.mounts().toString()))
                  .stream();
            })
        .map(place -> new Start(place.row(), place.count(), place.share()))
        .toList();
  }

  /** One step more; says how far it is now and then. */
  private void tick() {
    int steps = done.incrementAndGet();
    if (steps % TOLD == 0 && !progress.goOn(Math.min(steps, total), total)) {
      stopped = true;
    }
  }
}
