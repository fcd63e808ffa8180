package org.staywright.fit.rank;

import java.util.function.Supplier;

/** Something that is worked out when it is first asked for; not to be shared between threads. */
final class Once<T> implements Supplier<T> {

  private Supplier<T> source;
  private T value;

  Once(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public T get() {
    if (source != null) {
      value = source.get();
      source = null;
    }
    return value;
  }
}
