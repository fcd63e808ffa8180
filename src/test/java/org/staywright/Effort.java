package org.staywright;

import java.util.Arrays;

/** How much of a long check an ordinary run does; {@code mvn verify -Pfull} does all of it. */
public final class Effort {

  public static final boolean FULL = Boolean.getBoolean("staywright.full");

  private Effort() {}

  /** So many cases. */
  public static int of(int all, int ordinary) {
    return FULL ? all : ordinary;
  }

  /** The first so many. */
  public static int[] of(int[] all, int ordinary) {
    return FULL ? all : Arrays.copyOf(all, ordinary);
  }
}
