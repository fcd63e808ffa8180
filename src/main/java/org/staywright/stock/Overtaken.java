package org.staywright.stock;

/** Another revision came in between: what was worked out holds no longer. */
public final class Overtaken extends RuntimeException {

  Overtaken(int base) {
    super("revision " + base + " is no longer the newest");
  }
}
