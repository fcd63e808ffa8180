package org.staywright.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.spring.SteppedColumn.YOUNG;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Published values are in {@link StrengthChecks}. */
class SteppedColumnTest {

  private static final double INERTIA = 1e-9;

  @Test
  void agreesWithFiniteElementsOnRandomColumns() {
    long seed = 20_260_702;
    System.out.println("SteppedColumnTest seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 40; i++) {
      double rod = 0.05 + 0.9 * random.nextDouble();
      double tube = 0.05 + 0.9 * random.nextDouble();
      double stiffer = INERTIA * Math.pow(10, 3 * random.nextDouble() - 1);
      double elements = elements(new double[] {rod, tube}, new double[] {INERTIA, stiffer}, 12);
      double ours = new SteppedColumn(rod, INERTIA, tube, stiffer, 1).eulerLoad();
      assertEquals(elements, ours, 1e-4 * elements, "seed " + seed + ", draw " + i);
    }
  }

  /**
   * The oracle itself against a published table: three sections, stiff in the middle, P·l²/EI₂.
   * Timoshenko and Gere, Theory of Elastic Stability, 2nd ed., Table 2-10 (from memory).
   */
  @Test
  void finiteElementsMeetThePublishedTableOfThreeSections() {
    double[] weaker = {0.1, 0.2, 0.4, 0.6, 0.8};
    double[][] table = {
      {1.47, 2.40, 4.50, 8.59},
      {2.80, 4.22, 6.69, 9.33},
      {5.09, 6.68, 8.51, 9.67},
      {6.98, 8.19, 9.24, 9.78},
      {8.55, 9.18, 9.63, 9.84},
    };
    for (int i = 0; i < weaker.length; i++) {
      for (int j = 0; j < 4; j++) {
        double middle = 0.2 * (j + 1);
        double end = (1 - middle) / 2;
        double load =
            elements(
                new double[] {end, middle, end},
                new double[] {weaker[i] * INERTIA, INERTIA, weaker[i] * INERTIA},
                10);
        String place = "I₁/I₂ = " + weaker[i] + ", a/l = " + middle;
        assertEquals(table[i][j], load / (YOUNG * INERTIA), 0.01, place);
      }
    }
  }

  @Test
  void isEulersColumnWhereBothSectionsAreAlike() {
    double euler = Math.PI * Math.PI * YOUNG * INERTIA / 0.36;
    for (double rod : new double[] {0, 1e-6, 0.1, 0.3, 0.5, 0.6}) {
      double load = new SteppedColumn(rod, INERTIA, 0.6 - rod, INERTIA, 1).eulerLoad();
      assertEquals(euler, load, 1e-7 * euler, "rod " + rod);
    }
  }

  @Test
  void liesBetweenTheColumnsOfEitherSection() {
    for (double rod = 0.05; rod < 0.6; rod += 0.05) {
      double load = new SteppedColumn(rod, INERTIA, 0.6 - rod, 5 * INERTIA, 1).eulerLoad();
      double weak = Math.PI * Math.PI * YOUNG * INERTIA / 0.36;
      assertTrue(load > weak && load < 5 * weak);
    }
  }

  @Test
  void weakensAsTheRodComesOut() {
    double before = Double.MAX_VALUE;
    for (double length = 0.30; length <= 0.50; length += 0.01) {
      double load = SteppedColumn.of(spring(), length, 0.02).criticalLoad();
      assertTrue(load < before);
      before = load;
    }
  }

  @Test
  void neverCarriesMoreThanItsYieldLoad() {
    for (double length = 0.01; length < 3; length *= 1.3) {
      SteppedColumn column = new SteppedColumn(length / 2, INERTIA, length / 2, INERTIA, 10_000);
      double load = column.criticalLoad();
      assertTrue(load <= 10_000 && load <= column.eulerLoad());
    }
  }

  /** Euler and Johnson touch at half the yield load, in value and in slope. */
  @Test
  void passesSmoothlyFromStockyToSlender() {
    double euler = Math.PI * Math.PI * YOUNG * INERTIA / 0.25;
    double at = new SteppedColumn(0.2, INERTIA, 0.3, INERTIA, 2 * euler).criticalLoad();
    assertEquals(euler, at, 1e-6 * euler);
    double stocky = new SteppedColumn(0.2, INERTIA, 0.3, INERTIA, 2 * euler * 0.999).criticalLoad();
    assertEquals(euler, stocky, 1e-5 * euler);
  }

  private static GasSpring spring() {
    return new GasSpring(
        new Cylinder(0.008, 0.018, 0.0156, 0.2, 0.46, 0.26, 19, 1.5, 34e-6, 1e-6), 400);
  }

  /** Beam elements with cubic shape: K·v = P·G·v, the ends pinned; the least P. */
  private static double elements(double[] length, double[] inertia, int each) {
    int nodes = length.length * each + 1;
    RealMatrix bending = new Array2DRowRealMatrix(2 * nodes, 2 * nodes);
    RealMatrix geometry = new Array2DRowRealMatrix(2 * nodes, 2 * nodes);
    for (int e = 0; e < nodes - 1; e++) {
      double h = length[e / each] / each;
      double stiff = YOUNG * inertia[e / each] / (h * h * h);
      double[][] k = {
        {12, 6 * h, -12, 6 * h},
        {6 * h, 4 * h * h, -6 * h, 2 * h * h},
        {-12, -6 * h, 12, -6 * h},
        {6 * h, 2 * h * h, -6 * h, 4 * h * h}
      };
      double[][] g = {
        {36, 3 * h, -36, 3 * h},
        {3 * h, 4 * h * h, -3 * h, -h * h},
        {-36, -3 * h, 36, -3 * h},
        {3 * h, -h * h, -3 * h, 4 * h * h}
      };
      for (int i = 0; i < 4; i++) {
        for (int j = 0; j < 4; j++) {
          bending.addToEntry(2 * e + i, 2 * e + j, stiff * k[i][j]);
          geometry.addToEntry(2 * e + i, 2 * e + j, g[i][j] / (30 * h));
        }
      }
    }
    int[] free = new int[2 * nodes - 2];
    int n = 0;
    for (int i = 0; i < 2 * nodes; i++) {
      if (i != 0 && i != 2 * nodes - 2) {
        free[n++] = i;
      }
    }
    // The largest 1/P of L⁻¹·G·L⁻ᵀ, with K = L·Lᵀ.
    CholeskyDecomposition root =
        new CholeskyDecomposition(bending.getSubMatrix(free, free), 1e-6, 1e-10);
    RealMatrix inverse = new LUDecomposition(root.getL()).getSolver().getInverse();
    RealMatrix symmetric =
        inverse.multiply(geometry.getSubMatrix(free, free)).multiply(inverse.transpose());
    RealMatrix even = symmetric.add(symmetric.transpose()).scalarMultiply(0.5);
    double largest = 0;
    for (double value : new EigenDecomposition(even).getRealEigenvalues()) {
      largest = Math.max(largest, value);
    }
    return 1 / largest;
  }

  /**
   * By hand: what the tube and its fitting leave of the length is rod; the weaker section yields.
   */
  @Test
  void isTheRodOnTheTubeOfASpring() {
    SteppedColumn thin = SteppedColumn.of(spring(0.008, 0.018, 0.0156), 0.4, 0.03);
    assertEquals(0.15, thin.rodLength(), 1e-12);
    assertEquals(0.25, thin.tubeLength(), 1e-12);
    assertEquals(201.0619e-12, thin.rodInertia(), 1e-16);
    assertEquals(340e6 * 50.26548e-6, thin.yieldLoad(), 1e-2);
    SteppedColumn closed = SteppedColumn.of(spring(0.008, 0.018, 0.0156), 0.2, 0.03);
    assertEquals(0, closed.rodLength());
    assertEquals(0.2, closed.tubeLength());
    // 16 mm is the last thin one; here the wall of 40/38 mm, 122.5 mm², is weaker than the rod.
    assertEquals(
        340e6 * 122.5221e-6, SteppedColumn.of(spring(0.016, 0.040, 0.038), 0.4, 0).yieldLoad(), 1);
    assertEquals(
        305e6 * 122.5221e-6, SteppedColumn.of(spring(0.020, 0.040, 0.038), 0.4, 0).yieldLoad(), 1);
  }

  private static GasSpring spring(double rod, double tube, double bore) {
    return new GasSpring(new Cylinder(rod, tube, bore, 0.15, 0.37, 0.22, 10, 1, 30e-6, 0), 400);
  }
}
