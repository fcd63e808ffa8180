package org.staywright.motion;

/** A hand at the handle of what moves. Its force is above zero where it opens, N. */
public sealed interface Hand {

  /** Nobody's. */
  Hand NONE = new PushesOn(0);

  /** What it pushes with from rest, N. */
  double force();

  /**
   * The same force all the way.
   *
   * @param force N
   */
  record PushesOn(double force) implements Hand {}

  /**
   * As people do it: with its whole force until the handle has its pace, then with what keeps it
   * there, and not at all once the load goes faster by itself. Where the load comes to rest on its
   * way it takes hold again.
   *
   * @param force at most, N
   */
  record LetsGo(double force) implements Hand {

    /** Of the handle, m/s: our assumption, no source. */
    public static final double PACE = 0.5;
  }
}
