package org.staywright.fit.mounts;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.mechanism.Mounts.RodEnd;
import org.staywright.part.Range;

/** The whole sample range and two zones of 200 × 200 mm, on every core there is. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class MountSearchBench {

  private final Range range = SampleRange.read();
  private final Zones zones =
      new Zones(
          new Zone(-0.05, 0.15, -0.25, -0.05),
          new Zone(0.2, 0.4, -0.1, 0.1),
          List.of(),
          0,
          RodEnd.EITHER);

  @Benchmark
  public Found findMountsOfALid() {
    return MountSearch.of(range, Samples.lid(), zones, 1, Progress.UNSEEN);
  }
}
