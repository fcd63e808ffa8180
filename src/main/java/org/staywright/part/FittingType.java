package org.staywright.part;

/** What goes between a spring's thread and the thing it is hung on. */
public enum FittingType implements Coded {
  BALL_SOCKET,
  EYELET,
  CLEVIS,
  BALL_STUD,
  RETAINING_CLIP,
  PLATE;

  /** True for what screws onto a spring's end and carries its force. */
  public boolean endsASpring() {
    return this == BALL_SOCKET || this == EYELET || this == CLEVIS;
  }
}
