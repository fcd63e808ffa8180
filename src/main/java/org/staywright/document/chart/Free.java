package org.staywright.document.chart;

import java.util.ArrayList;
import java.util.List;
import org.staywright.document.draw.Role;

/** What the load does where the hand lets go, over its travel. */
enum Free {
  OPENS(Role.CURVE_2, "document.free.opens"),
  STAYS(Role.METAL, "document.free.stays"),
  SHUTS(Role.CURVE_3, "document.free.shuts");

  private final Role role;
  private final String key;

  Free(Role role, String key) {
    this.role = role;
    this.key = key;
  }

  Role role() {
    return role;
  }

  String key() {
    return key;
  }

  /**
   * @param from along the travel
   * @param to along the travel
   */
  public record Stretch(Free way, double from, double to) {}

  /**
   * All of the travel, stretch by stretch. A force below zero means that the load goes that way by
   * itself; straight between samples.
   *
   * @param open force that opens it
   * @param close force that closes it
   */
  static List<Stretch> stretches(double[] travel, double[] open, double[] close) {
    List<Stretch> stretches = new ArrayList<>();
    double from = travel[0];
    Free way = at(open[0], close[0]);
    for (int i = 1; i < travel.length; i++) {
      Free next = at(open[i], close[i]);
      while (way != next) {
        // From opening to shutting, or back, it comes through where it stays.
        Free between = way != STAYS && next != STAYS ? STAYS : next;
        double[] force = way == OPENS || between == OPENS ? open : close;
        double share = force[i - 1] / (force[i - 1] - force[i]);
        double to = travel[i - 1] + share * (travel[i] - travel[i - 1]);
        add(stretches, new Stretch(way, from, to));
        from = to;
        way = between;
      }
    }
    add(stretches, new Stretch(way, from, travel[travel.length - 1]));
    return stretches;
  }

  private static void add(List<Stretch> stretches, Stretch stretch) {
    if (stretch.to() > stretch.from()) {
      stretches.add(stretch);
    }
  }

  private static Free at(double open, double close) {
    return open < 0 ? OPENS : close < 0 ? SHUTS : STAYS;
  }
}
