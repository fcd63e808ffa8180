package org.staywright.fit.assess;

import org.staywright.mechanism.Travel;

/**
 * Samples of a travel that cover a stretch of it, the sample before it and the one after included.
 *
 * @param first sample
 * @param last sample
 */
public record TravelSection(int first, int last) {

  /**
   * @param from null for the start of the travel
   * @param to null for its end
   */
  public static TravelSection of(Travel travel, Double from, Double to) {
    int first = 0;
    int last = travel.last();
    while (from != null && first < travel.last() && travel.q()[first + 1] <= from) {
      first++;
    }
    while (to != null && last > first && travel.q()[last - 1] >= to) {
      last--;
    }
    return new TravelSection(first, last);
  }

  /** Only samples within: rougher, and never stricter than what is asked; one at least. */
  static TravelSection within(Travel travel, Double from, Double to) {
    int first = 0;
    int last = travel.last();
    while (from != null && first < last && travel.q()[first] < from) {
      first++;
    }
    while (to != null && last > first && travel.q()[last] > to) {
      last--;
    }
    return new TravelSection(first, last);
  }

  public boolean holds(int sample) {
    return first <= sample && sample <= last;
  }
}
