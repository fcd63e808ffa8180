package org.staywright.fit.rank;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.fit.Samples;
import org.staywright.fit.assess.Fit;
import org.staywright.part.Range;

/** Rows that nobody could tell apart share one. */
class AlikeTest {

  private static final Range RANGE = SampleRange.read();
  private static final List<Fit> FITS = Ranking.of(RANGE, Samples.lid().showing(100)).fits();

  @Test
  void everyFitStandsInOneGroupAtItsOwnRank() {
    List<Alike> groups = Alike.of(FITS, FITS.size());
    List<Fit> byRank = new ArrayList<>(FITS);
    groups.stream()
        .flatMap(group -> Stream.concat(Stream.of(group), group.others().stream()))
        .forEach(
            each -> {
              assertEquals(FITS.get(each.rank() - 1), each.fit());
              assertTrue(byRank.remove(each.fit()), "twice: " + each.fit().part().number());
            });
    assertEquals(List.of(), byRank);
  }

  @Test
  void membersFollowTheBestAndShareItsSizesWhileNoTwoGroupsDo() {
    List<Alike> groups = Alike.of(FITS, FITS.size());
    assertTrue(groups.stream().anyMatch(group -> group.others().size() > 1), "nothing is alike");
    for (Alike group : groups) {
      for (Alike other : group.others()) {
        assertTrue(other.rank() > group.rank());
        assertTrue(Alike.alike(group.fit(), other.fit()));
        assertEquals(
            group.fit().part().spring().stroke(), other.fit().part().spring().stroke(), 1e-6);
        assertEquals(
            group.fit().part().spring().force(),
            other.fit().part().spring().force(),
            0.15 * group.fit().part().spring().force());
      }
      for (Alike later : groups) {
        assertFalse(later.rank() > group.rank() && Alike.alike(group.fit(), later.fit()));
      }
    }
  }

  @Test
  void fewerGroupsAreTheFirstOfMore() {
    List<Alike> all = Alike.of(FITS, FITS.size());
    assertTrue(all.size() > 5);
    List<Alike> few = Alike.of(FITS, 5);
    assertEquals(all.subList(0, 5), few);
  }
}
