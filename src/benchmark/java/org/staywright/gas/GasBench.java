package org.staywright.gas;

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

/** What one pressure costs by each of the three ways the gas can be asked. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class GasBench {

  private static final double ROOM = 293.15;

  private final Isotherm isotherm = Isotherm.at(ROOM);
  private final IsothermFit fit = IsothermFit.of(isotherm, 10, 270);
  private final Isentrope isentrope = Isentrope.between(150, ROOM, 220);

  /** Not final, so that the compiler cannot work the answer out beforehand. */
  private double density = 171.3;

  private double pressure = 150e5;

  @Benchmark
  public double pressureByFit() {
    return fit.pressure(density);
  }

  @Benchmark
  public double pressureExactly() {
    return isotherm.pressure(density);
  }

  @Benchmark
  public double densityOfAPressure() {
    return isotherm.density(pressure);
  }

  @Benchmark
  public double fastPressureInterpolated() {
    return isentrope.pressure(density);
  }

  @Benchmark
  public double fastPressureExactly() {
    return Isentrope.pressure(150, ROOM, density);
  }

  @Benchmark
  public Isentrope isentropeMadeReady() {
    return Isentrope.between(150, ROOM, density);
  }

  @Benchmark
  public IsothermFit fitMadeReady() {
    return IsothermFit.of(isotherm, 10, density + 100);
  }
}
