package org.staywright.wording;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where the sentences of a topic stand, the first word of their keys: {@code fault.missing} in
 * {@code wording/fault.properties}, {@code part.brief} in {@code wording/part/part.properties}.
 */
final class Topics {

  /** Of several rooms: they lie beside the folders. */
  private static final List<String> BESIDE =
      List.of("caution", "document", "fault", "page", "unit");

  /** The rooms whose names their topics do not have. */
  private static final Map<String, String> ROOM =
      Map.of(
          "corner", "job",
          "ideal", "fit",
          "law", "part",
          "preference", "shell",
          "problem", "api",
          "saved", "job",
          "seat", "fit",
          "sideview", "bench",
          "way", "start");

  private static final Map<String, String> FOUND = new ConcurrentHashMap<>();

  private Topics() {}

  /** Name of the bundle that has a key. */
  static String bundle(String key) {
    String topic = key.substring(0, key.indexOf('.'));
    return FOUND.computeIfAbsent(topic, any -> "wording." + place(topic, '.'));
  }

  /** Of its files below {@code wording}, without language and ending. */
  static String file(String topic) {
    return place(topic, '/');
  }

  private static String place(String topic, char step) {
    return BESIDE.contains(topic) ? topic : ROOM.getOrDefault(topic, topic) + step + topic;
  }
}
