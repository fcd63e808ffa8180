package org.staywright.stock;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.fit.SampleLid;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.part.Column;
import org.staywright.part.MeasuredSpring;
import org.staywright.part.PartSearch;
import org.staywright.part.Selection;

/**
 * A range of a million imported rows in a heap of 1 GB. The first run imports it into {@code
 * target/million}, which takes minutes; later ones find it there.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class MillionBench {

  private static final int ROWS = 1_000_000;
  private static final int PAGE = 25;

  private AtSize million;
  private final Job lid = SampleLid.job();

  @Setup
  public void fill() throws IOException {
    million = new AtSize(Path.of("target", "million"));
    if (million.stock.newest() == 0) {
      million.take(AtSize.file(ROWS));
    }
  }

  /** The columns built anew from the database. */
  @Benchmark
  public int buildColumns() {
    return million.stock.range(million.stock.newest()).size();
  }

  @Benchmark
  public Ranking rankForOneLid() {
    return Ranking.of(million.current.get(), lid);
  }

  /** As the page of parts asks: two sizes measured, the closest first. */
  @Benchmark
  public Selection searchBySize() {
    MeasuredSpring measured =
        new MeasuredSpring(
            Map.of(
                Column.STROKE, new MeasuredSpring.Figure(0.2, 0.05),
                Column.TUBE_DIAMETER, new MeasuredSpring.Figure(0.022, 0.005)),
            false);
    return measured.rows(million.current.get(), 0, PAGE);
  }

  /** As a caller over HTTP may ask: all parts, the cheapest first. */
  @Benchmark
  public Selection searchByPrice() {
    return new PartSearch(null, null, false, null, Map.of())
        .rows(million.current.get(), PartSearch.Order.PRICE, false, 0, PAGE);
  }
}
