package org.staywright.stock;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.stock.intake.Imports;

/** A file of 100,000 rows checked and written into an empty stock on the disk. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class ImportingBench {

  private Path file;
  private AtSize empty;

  @Setup(Level.Trial)
  public void write() throws IOException {
    file = AtSize.file(100_000);
  }

  @Setup(Level.Invocation)
  public void empty() throws IOException {
    empty = new AtSize(Files.createTempDirectory(Path.of("target"), "import"));
  }

  @Benchmark
  public Imports.Outcome importHundredThousandRows() throws IOException {
    return empty.take(file);
  }
}
