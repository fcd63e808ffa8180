package org.staywright.stock.intake;

import java.io.InputStream;

/** One byte again and again. */
final class Endless extends InputStream {

  private final int value;
  long given;

  Endless(int value) {
    this.value = value;
  }

  @Override
  public int read() {
    given++;
    return value;
  }
}
