package org.staywright.part;

/** Kinds of parts that push, pull or damp. */
public enum Family implements Coded {
  GAS_SPRING,
  LOCKING_STRUT,
  SEAT_COLUMN,
  TRACTION_SPRING,
  DAMPER,
  COIL_SPRING;

  /** Whether nitrogen drives it. */
  public boolean hasGas() {
    return this != DAMPER && this != COIL_SPRING;
  }

  /** Whether it pulls its ends together. */
  public boolean pulls() {
    return this == TRACTION_SPRING;
  }

  /** Whether it can carry a flap or a load of its own accord, between two mounts. */
  public boolean carries() {
    return this != DAMPER && this != SEAT_COLUMN;
  }

  /** Whether oil or gas in a tube makes its force. */
  public boolean hasTube() {
    return this != COIL_SPRING;
  }

  /** Whether a valve holds it at any place of its stroke. */
  public boolean locks() {
    return this == LOCKING_STRUT || this == SEAT_COLUMN;
  }
}
