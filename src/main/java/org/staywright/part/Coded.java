package org.staywright.part;

import java.util.Optional;

/** An enumeration with a spelling of its own at the boundary. */
public interface Coded {

  /** As written in JSON and CSV: {@code gas-spring}. */
  default String code() {
    return ((Enum<?>) this).name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  /** The constant with a code. */
  static <E extends Enum<E> & Coded> Optional<E> of(Class<E> type, String code) {
    for (E constant : type.getEnumConstants()) {
      if (constant.code().equals(code)) {
        return Optional.of(constant);
      }
    }
    return Optional.empty();
  }
}
