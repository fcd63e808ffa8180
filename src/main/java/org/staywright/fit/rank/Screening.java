package org.staywright.fit.rank;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.assess.Path;
import org.staywright.fit.assess.Paths;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.SetPrice;
import org.staywright.part.Column;
import org.staywright.part.Range;

/**
 * The fast pass over the range: rejects by what is cheapest to tell, runs the rest in blocks, and
 * hands to the plain {@link Assessment} whatever lies so near a bound that its own small errors
 * could decide.
 */
public final class Screening {

  private final Job job;
  private final Range range;
  private final Paths paths;
  private final Sieve sieve;
  private final int[] counts;
  private final Map<Rejection, Integer> rejected = new EnumMap<>(Rejection.class);
  private final List<Candidate> fits = new ArrayList<>();
  private final List<Candidate> near = new ArrayList<>();
  private final Told told;

  /** Hears of each that is out. */
  interface Told {

    void out(int row, int count, Rejection reason);
  }

  public Screening(Job job, Range range) {
    this(job, range, (row, count, reason) -> {});
  }

  public Screening(Job job, Range range, Told told) {
    this.job = job;
    this.range = range;
    this.told = told;
    paths = new Paths(job);
    sieve = new Sieve(job, range, paths);
    counts = job.counts().stream().mapToInt(Integer::intValue).toArray();
    for (Rejection reason : Rejection.values()) {
      rejected.put(reason, 0);
    }
    run();
  }

  Job job() {
    return job;
  }

  Paths paths() {
    return paths;
  }

  Map<Rejection, Integer> rejected() {
    return rejected;
  }

  public List<Candidate> fits() {
    return fits;
  }

  public List<Candidate> near() {
    return near;
  }

  private void run() {
    if (!job.mechanism().handMoves()) {
      IntStream.range(0, range.size()).forEach(row -> decidePlainly(row, 1));
      return;
    }
    List<Survivor> survivors = new ArrayList<>();
    for (int row = 0; row < range.size(); row++) {
      Sieve.Result result = sieve.sift(row);
      Rejection out = result.rejection();
      if (out == null) {
        survivors.add(result.survived());
        continue;
      }
      for (int count : counts) {
        reject(row, count, sieve.shelfFails(out, row, count) ? Rejection.STOCK : out);
      }
    }
    double[] gas = range.column(Column.GAS_MASS);
    List<Survivor> open = new ArrayList<>();
    List<Survivor> others = new ArrayList<>();
    survivors.forEach(each -> (Double.isNaN(gas[each.row()]) ? others : open).add(each));
    screen(open);
    others.forEach(this::decidePlainly);
    if (job.requirements().asksInTime()) {
      setInMotion();
    }
  }

  /** What fits so far is judged plainly: no block knows of time. */
  private void setInMotion() {
    List<Candidate> moved = fits.parallelStream().map(this::exact).toList();
    fits.clear();
    moved.forEach(this::add);
  }

  /** A candidate with its plain assessment. */
  Candidate exact(Candidate candidate) {
    if (candidate.exact() != null) {
      return candidate;
    }
    int row = candidate.row();
    Assessment exact = Assessment.of(job, paths, range, range.part(row), candidate.count());
    return Candidate.of(paths.criteria(), row, exact.fit());
  }

  /** What works as an open gas spring runs in blocks. */
  private void screen(List<Survivor> survivors) {
    if (survivors.isEmpty()) {
      return;
    }
    Block block = new Block(job, range, paths.criteria(), counts, survivors);
    // Springs that share a path share a block; where the flap stops itself that is all of them.
    IdentityHashMap<Path, List<Survivor>> together =
        survivors.stream()
            .collect(
                Collectors.groupingBy(Survivor::path, IdentityHashMap::new, Collectors.toList()));
    together.forEach((path, sharing) -> inBlocks(block, sharing, path));
  }

  private void inBlocks(Block block, List<Survivor> survivors, Path path) {
    for (int from = 0; from < survivors.size(); from += Lanes.WIDTH) {
      List<Survivor> lanes =
          survivors.subList(from, Math.min(survivors.size(), from + Lanes.WIDTH));
      block.run(lanes, path);
      for (int lane = 0; lane < lanes.size(); lane++) {
        for (int c = 0; c < counts.length; c++) {
          decide(block, lanes.get(lane), lane, c);
        }
      }
    }
  }

  private void decide(Block block, Survivor survivor, int lane, int c) {
    int row = survivor.row();
    if (sieve.shelfFails(null, row, counts[c])) {
      reject(row, counts[c], Rejection.STOCK);
      return;
    }
    SetPrice price =
        SetPrice.of(counts[c], range.offer(row), survivor.rod(), survivor.tube())
            .with(job.beside());
    block
        .candidate(survivor, lane, c, price)
        .ifPresentOrElse(this::add, () -> decidePlainly(row, counts[c]));
  }

  private void decidePlainly(Survivor survivor) {
    for (int count : counts) {
      decidePlainly(survivor.row(), count);
    }
  }

  private void decidePlainly(int row, int count) {
    Assessment exact = Assessment.of(job, paths, range, range.part(row), count);
    if (exact.rejection() != null) {
      reject(row, count, exact.rejection());
    } else {
      add(Candidate.of(paths.criteria(), row, exact.fit()));
    }
  }

  private void add(Candidate candidate) {
    (candidate.fits() ? fits : near).add(candidate);
  }

  private void reject(int row, int count, Rejection reason) {
    rejected.merge(reason, 1, Integer::sum);
    told.out(row, count, reason);
  }
}
