package org.staywright.fit.rank;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is worked out when it is first asked for; not to be shared between threads. */
final class Once<T> implements Supplier<@Nullable T> {

  private @Nullable Supplier<T> source;
  private @Nullable T value;

  Once(Supplier<T> source) {
    this.source = source;
  }

  @Override
  public @Nullable T get() {
    if (source != null) {
      value = source.get();
      source = null;
    }
    return value;
  }
}
