package org.staywright.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Pages that are picked out, held against everything sorted and then cut. */
class SelectionTest {

  private static final long SEED = 20_261_129;

  @Test
  void isThePageThatSortingAllWouldGive() {
    Random random = new Random(SEED);
    for (int round = 0; round < 300; round++) {
      int size = random.nextInt(400);
      // Few different keys make many ties.
      int different = 1 + random.nextInt(random.nextBoolean() ? 5 : 1000);
      double[] keys = random.ints(size, 0, different).mapToDouble(i -> i).toArray();
      if (size > 0 && random.nextBoolean()) {
        keys[random.nextInt(size)] = Double.POSITIVE_INFINITY;
      }
      int step = 1 + random.nextInt(3);
      int from = random.nextInt(450);
      int most = random.nextInt(60);
      List<Integer> all =
          IntStream.range(0, size)
              .filter(row -> row % step == 0)
              .boxed()
              .sorted(Comparator.comparingDouble(row -> keys[row]))
              .toList();
      Selection page = Selection.of(size, row -> row % step == 0, row -> keys[row], from, most);
      String at = "seed " + SEED + ", round " + round;
      assertEquals(all.size(), page.total(), at);
      assertEquals(all.stream().skip(from).limit(most).toList(), page.rows(), at);
    }
  }

  @Test
  void keepsTheOrderOfTheRowsWhereNoOtherIsAskedFor() {
    assertEquals(
        new Selection(50, List.of(20, 22)), Selection.of(100, row -> row % 2 == 0, null, 10, 2));
  }

  @Test
  void isEmptyBehindTheEnd() {
    assertEquals(new Selection(3, List.of()), Selection.of(3, row -> true, row -> row, 9, 5));
  }
}
