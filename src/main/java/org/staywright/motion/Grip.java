package org.staywright.motion;

/** What a hand is doing at a time. */
enum Grip {
  /** It pushes with its whole force. */
  PUSHING,
  /** It pushes with what keeps the pace. */
  STEERING,
  /** It has let go. */
  GONE;

  /**
   * How it goes on at its pace, by what that asks of it.
   *
   * @param asked moment or force that keeps the pace, in the direction of the hand
   * @param most that it can
   */
  static Grip at(double asked, double most) {
    if (asked < 0) {
      return GONE;
    }
    return asked <= most ? STEERING : PUSHING;
  }
}
