package org.staywright.fit.rank;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Alongside;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.gas.Isotherm;
import org.staywright.gas.IsothermFit;
import org.staywright.mechanism.Travel;
import org.staywright.part.Column;
import org.staywright.part.Range;
import org.staywright.spring.GasSpring;

/** The whole sample range ranked for one lid, and the loop that does the work. One thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RankingBench {

  /** Rows returned of each list: one row costs an exact assessment. */
  @Param({"20"})
  int limit;

  private final Range range = SampleRange.read();
  private Job job;

  private final int[] counts = {1, 2};
  private final Lanes lanes = new Lanes();
  private final Lanes.Hand[] hands = {new Lanes.Hand(), new Lanes.Hand()};
  private double[][] fits;

  @Setup
  public void prepare() {
    Job lid = Samples.lid();
    job =
        new Job(
            lid.name(),
            lid.mechanism(),
            lid.springCounts(),
            lid.rodEnd(),
            lid.tubeEnd(),
            lid.conditions(),
            lid.requirements(),
            lid.filters(),
            lid.rankBy(),
            limit);
    double[] fit = IsothermFit.of(Isotherm.at(293.15), 10, 270).coefficients();
    fits = new double[][] {fit, fit, fit};
    for (int lane = 0; lane < Lanes.WIDTH; lane++) {
      GasSpring spring = range.part(lane * 7).spring().asGasSpring().orElseThrow();
      lanes.area[lane] = spring.cylinder().rodArea();
      for (Lanes.Gas gas : new Lanes.Gas[] {lanes.nominal, lanes.weak, lanes.strong}) {
        gas.mass[lane] = range.column(Column.GAS_MASS)[lane * 7];
        gas.base[lane] = spring.gasVolume(0.5, 293.15);
        gas.friction[lane] = spring.friction();
      }
    }
  }

  /**
   * 61 angles × 3 temperatures × 2 counts over every part of the range, rows assessed and ordered.
   */
  @Benchmark
  public Ranking rankWholeRange() {
    return Ranking.of(range, job);
  }

  /**
   * One block of 256 springs, 61 angles, 3 temperatures, 2 counts: 46,848 forces and hand forces.
   */
  @Benchmark
  public Lanes.Hand[] runOneBlock() {
    Travel travel = job.mechanism().travel(job.mechanism().end());
    lanes.run(Lanes.WIDTH, travel, Alongside.nothing(travel), counts, fits, hands);
    return hands;
  }

  /** One candidate by the equation of state at every sample. */
  @Benchmark
  public Assessment assessOnePlainly() {
    return Assessment.of(job, range, range.part("TS4-JCY").orElseThrow(), 1);
  }
}
