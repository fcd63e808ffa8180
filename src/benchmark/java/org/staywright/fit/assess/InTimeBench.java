package org.staywright.fit.assess;

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
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.Uncertainties;
import org.staywright.motion.Hand;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Range;

/** What motions and chances of the best part for a lid cost. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class InTimeBench {

  private final Range range = SampleRange.read();
  private final Job lid = Samples.lid();
  private final Fit fit = Ranking.of(range, lid).fits().get(0);
  private final MotionSetup shut =
      new InTime(lid, fit).shut(Corner.NOMINAL).with(fit.count(), new Hand.LetsGo(50));
  private final Uncertainties usual = Uncertainties.usual(lid, fit.part());

  /** Opened by a hand, through gas and oil to the stop. */
  @Benchmark
  public Motion oneMotion() {
    return Motion.of(shut);
  }

  /** All that a fit's details show. */
  @Benchmark
  public TimeFigures figuresInTime() {
    return TimeFigures.of(lid, fit).orElseThrow();
  }

  @Benchmark
  public Chance tenThousandDraws() {
    return Chance.of(lid, fit, usual, 10_000, 1);
  }
}
