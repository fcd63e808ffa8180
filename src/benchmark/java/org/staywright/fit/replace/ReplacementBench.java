package org.staywright.fit.replace;

import java.util.Map;
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
import org.staywright.fit.job.Job.FittingWish;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Range;
import org.staywright.unit.Unit;

/** What finding a replacement in the whole sample range takes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ReplacementBench {

  private static final FittingWish BALL = new FittingWish(FittingType.BALL_SOCKET, null);

  private final Range range = SampleRange.read();

  private final Measurements usual =
      of(
          Map.of(
              Gauge.ROD_DIAMETER, new Reading(8e-3, 1e-4),
              Gauge.TUBE_DIAMETER, new Reading(0.018, 3e-4),
              Gauge.EXTENDED_CENTRES, new Reading(0.440, 2e-3),
              Gauge.STROKE, new Reading(0.158, 3e-3)),
          BALL,
          null);

  /** Ends unknown, mounts in place, a scale: all that costs time. */
  private final Measurements hard =
      of(
          Map.of(
              Gauge.EXTENDED_CENTRES, new Reading(0.440, 6e-3),
              Gauge.COMPRESSED_CENTRES, new Reading(0.280, 6e-3),
              Gauge.CENTRES_CLOSED, new Reading(0.295, 6e-3),
              Gauge.CENTRES_OPEN, new Reading(0.430, 6e-3)),
          null,
          new ScaleReading(new Reading(280, 20), 0.01, Unit.ROOM, ScaleReading.Direction.PRESSING));

  private static Measurements of(Map<Gauge, Reading> sizes, FittingWish end, ScaleReading scale) {
    return new Measurements(sizes, null, end, end, null, Finish.ZINC, false, null, scale, 2, null);
  }

  @Benchmark
  public Replacements findAmongAll() {
    return Replacements.of(range, usual, 20);
  }

  @Benchmark
  public Replacements findByAllThatCostsTime() {
    return Replacements.of(range, hard, 20);
  }
}
