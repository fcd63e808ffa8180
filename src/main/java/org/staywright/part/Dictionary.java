package org.staywright.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Small numbers for values that recur. */
final class Dictionary<T> {

  private final Map<T, Integer> codes = new HashMap<>();
  private final List<T> values = new ArrayList<>();

  int code(T value) {
    return codes.computeIfAbsent(
        value,
        fresh -> {
          values.add(fresh);
          return values.size() - 1;
        });
  }

  T value(int code) {
    return values.get(code);
  }
}
