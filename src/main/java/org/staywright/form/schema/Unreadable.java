package org.staywright.form.schema;

/** Thrown where a body is not JSON at all; says where reading stopped. */
public final class Unreadable extends RuntimeException {

  private final int line;
  private final int column;

  public Unreadable(int line, int column) {
    super("not JSON at line " + line + ", column " + column);
    this.line = line;
    this.column = column;
  }

  /** Counted from 1. */
  public int line() {
    return line;
  }

  /** Counted from 1. */
  public int column() {
    return column;
  }
}
