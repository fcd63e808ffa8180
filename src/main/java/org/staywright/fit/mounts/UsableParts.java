package org.staywright.fit.mounts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.SetPrice;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.rank.Lanes;
import org.staywright.fit.rank.PeakBound;
import org.staywright.fit.rank.Sieve;
import org.staywright.gas.Isotherm;
import org.staywright.gas.IsothermFit;
import org.staywright.part.Column;
import org.staywright.part.Range;
import org.staywright.spring.GasSpring;

/**
 * The parts that a job could use wherever they are hung and that work as open gas springs, those of
 * one length side by side, with what {@link Lanes} ask of each.
 */
final class UsableParts {

  /**
   * Parts of one length.
   *
   * @param compressed with end fittings, m
   * @param extended with end fittings, m
   * @param from its first slot
   * @param to behind its last slot
   */
  record Rack(double compressed, double extended, int from, int to) {}

  private record Slot(int row, Sieve.Outfit outfit, GasSpring spring) {}

  /** What depends on the case, by slot. */
  record Gas(double[] mass, double[] base, double[] friction) {}

  final int[] row;
  final double[] area;
  final List<Rack> racks = new ArrayList<>();
  private final Map<SpringState, Gas> gas = new EnumMap<>(SpringState.class);

  /** Coefficients of p/ρ by case. */
  final double[][] fits = new double[SpringState.values().length][];

  final SetPrice[][] prices;
  private final boolean[][] there;

  UsableParts(Job job, Range range) {
    List<Slot> slots = slots(job, range);
    int size = slots.size();
    int counts = job.springCounts().size();
    row = slots.stream().mapToInt(Slot::row).toArray();
    area = slots.stream().mapToDouble(slot -> slot.spring().cylinder().rodArea()).toArray();
    prices = new SetPrice[counts][size];
    there = new boolean[counts][size];
    for (int i = 0; i < size; i++) {
      Slot slot = slots.get(i);
      for (int c = 0; c < counts; c++) {
        int count = job.springCounts().get(c);
        there[c][i] = !job.filters().inStockOnly() || range.stock(slot.row()) >= count;
        prices[c][i] =
            SetPrice.of(count, range.offer(slot.row()), slot.outfit().rod(), slot.outfit().tube())
                .with(job.beside());
      }
    }
    for (int from = 0; from < size; ) {
      Sieve.Outfit first = slots.get(from).outfit();
      int to = from + 1;
      while (to < size && alike(first, slots.get(to).outfit())) {
        to++;
      }
      racks.add(new Rack(first.shortest(), first.longest(), from, to));
      from = to;
    }
    fill(job, range, slots);
  }

  Gas gas(SpringState state) {
    return Objects.requireNonNull(gas.get(state));
  }

  int size() {
    return row.length;
  }

  /** Whether the stock suffices, where the job asks that it does. */
  boolean there(int slot, int count) {
    return there[count][slot];
  }

  private static List<Slot> slots(Job job, Range range) {
    Sieve sieve = new Sieve(job, range, null);
    List<Slot> slots = new ArrayList<>();
    for (int row = 0; row < range.size(); row++) {
      Sieve.Outfit outfit = sieve.outfit(row);
      boolean open = !Double.isNaN(range.column(Column.GAS_MASS)[row]);
      if (!open || outfit.rejection() != null || outfit.gasLeft() < Assessment.LEAST_GAS) {
        continue;
      }
      slots.add(new Slot(row, outfit, range.gasSpring(row)));
    }
    slots.sort(
        Comparator.comparingDouble((Slot slot) -> slot.outfit().shortest())
            .thenComparingDouble(slot -> slot.outfit().longest())
            .thenComparingInt(Slot::row));
    return slots;
  }

  private static boolean alike(Sieve.Outfit one, Sieve.Outfit other) {
    return one.shortest() == other.shortest() && one.longest() == other.longest();
  }

  private void fill(Job job, Range range, List<Slot> slots) {
    double lowest = PeakBound.DENSEST;
    double highest = 1;
    for (SpringState state : SpringState.values()) {
      double kelvin = state.kelvin(job.conditions());
      Gas filled = new Gas(new double[size()], new double[size()], new double[size()]);
      gas.put(state, filled);
      for (int i = 0; i < size(); i++) {
        Slot slot = slots.get(i);
        GasSpring spring = slot.spring();
        filled.mass[i] = state.gasMass(range, slot.row(), slot.outfit().gasLeft());
        filled.base[i] = spring.gasVolume(slot.outfit().longest(), kelvin);
        filled.friction[i] = spring.friction(kelvin);
        lowest = Math.min(lowest, filled.mass[i] / spring.gasVolume(0, kelvin));
        double dense = filled.mass[i] / spring.gasVolume(spring.stroke(), kelvin);
        if (dense > 0 && dense < PeakBound.DENSEST) {
          highest = Math.max(highest, dense);
        }
      }
    }
    for (SpringState state : SpringState.values()) {
      fits[state.ordinal()] =
          IsothermFit.of(
                  Isotherm.at(state.kelvin(job.conditions())),
                  Math.min(lowest, highest / 2),
                  highest)
              .coefficients();
    }
  }
}
