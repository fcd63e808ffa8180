package org.staywright.spring;

import static org.staywright.unit.Unit.ATMOSPHERE;
import static org.staywright.unit.Unit.ROOM;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.gas.Isotherm;
import org.staywright.gas.IsothermFit;

/** What one force costs: alone, and in a block of many springs at one length, as ranking asks. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SpringBench {

  private static final int BLOCK = 256;

  private final GasSpring spring =
      new GasSpring(
          new Cylinder(0.008, 0.018, 0.0156, 0.16, 0.38, 0.22, 19, 1.5, 27.7e-6, 4.5e-6), 400);
  private final ChargedSpring charged = spring.charged();
  private final double[] c = IsothermFit.of(Isotherm.at(ROOM), 10, 270).coefficients();

  private final double[] mass = new double[BLOCK];
  private final double[] volume = new double[BLOCK];
  private final double[] area = new double[BLOCK];
  private final double[] extended = new double[BLOCK];
  private final double[] density = new double[BLOCK];
  private final double[] force = new double[BLOCK];

  private double compression = 0.09;
  private double length = 0.29;

  public SpringBench() {
    for (int i = 0; i < BLOCK; i++) {
      mass[i] = charged.gasMass() * (1 - 0.001 * i);
      volume[i] = spring.cylinder().gasVolume();
      area[i] = spring.cylinder().rodArea();
      extended[i] = spring.extendedLength();
    }
  }

  /** The slow, obvious way: every term of the equation of state. */
  @Benchmark
  public double forceExactly() {
    return charged.force(compression, ROOM);
  }

  /** Polynomial in density, one store a loop: what the compiler turns into vectors. */
  @Benchmark
  @OperationsPerInvocation(BLOCK)
  public double[] forceInABlock() {
    densities();
    forces();
    return force;
  }

  private void densities() {
    for (int i = 0; i < BLOCK; i++) {
      density[i] = mass[i] / (volume[i] - area[i] * (extended[i] - length));
    }
  }

  private void forces() {
    double c0 = c[0];
    double c1 = c[1];
    double c2 = c[2];
    double c3 = c[3];
    double c4 = c[4];
    double c5 = c[5];
    double c6 = c[6];
    for (int i = 0; i < BLOCK; i++) {
      double r = density[i];
      double p = r * (c0 + r * (c1 + r * (c2 + r * (c3 + r * (c4 + r * (c5 + r * c6))))));
      force[i] = (p - ATMOSPHERE) * area[i];
    }
  }

  @Benchmark
  public ChargedSpring fillASpring() {
    return spring.charged(compression + 1, 1);
  }

  @Benchmark
  public double bucklingLoad() {
    return SteppedColumn.of(spring, length, 0.02).criticalLoad();
  }
}
