package org.staywright.wording;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Where the sentences of a topic stand, the first word of their keys: {@code fault.missing} in
 * {@code wording/fault.properties}, {@code part.brief} in {@code wording/part/part.properties}.
 * What is said of one mechanism or family alone ends in its code and stands in a file of its own,
 * whatever its topic: {@code part.brief.damper} in {@code wording/spring/damper.properties}.
 */
final class Topics {

  /**
   * Which topics a file holds, where it is not the one of the topic's name in the room of its name.
   */
  private static final Map<String, List<String>> HELD =
      Map.ofEntries(
          Map.entry("caution", List.of("caution")),
          Map.entry("document", List.of("document")),
          Map.entry("fault", List.of("fault")),
          Map.entry("page", List.of("page")),
          Map.entry("unit", List.of("unit")),
          Map.entry("api/problem", List.of("problem")),
          Map.entry("bench/bench", List.of("profile")),
          Map.entry("bench/sideview", List.of("sideview")),
          Map.entry("field/field", List.of("group", "option")),
          Map.entry("fit/fit", List.of("ranking", "rejected", "row", "verdict", "why")),
          Map.entry("fit/ideal", List.of("ideal")),
          Map.entry("fit/seat", List.of("seat")),
          Map.entry("job/corner", List.of("corner")),
          Map.entry("job/job", List.of("jobs")),
          Map.entry("job/saved", List.of("saved")),
          Map.entry("part/law", List.of("law")),
          Map.entry("part/part", List.of("search")),
          Map.entry("shell/preference", List.of("preference")),
          Map.entry("start/way", List.of("way")),
          Map.entry("time/time", List.of("chance", "played")));

  private static final Map<String, String> FILE = new HashMap<>();

  static {
    HELD.forEach((file, topics) -> topics.forEach(topic -> FILE.put(topic, file)));
  }

  /** Folders of what is said of one mechanism or family alone. */
  private static final List<String> OF_KINDS = List.of("mechanism", "spring");

  private static final Map<String, Optional<String>> BY_CODE = new ConcurrentHashMap<>();

  private Topics() {}

  /** Name of the bundle that has a key. */
  static String bundle(String key) {
    return "wording." + file(key).replace('/', '.');
  }

  /** The file that has a key: below {@code wording}, without language and ending. */
  static String file(String key) {
    String last = key.substring(key.lastIndexOf('.') + 1);
    String topic = key.substring(0, key.indexOf('.'));
    return BY_CODE
        .computeIfAbsent(last, Topics::ofKind)
        .orElseGet(() -> FILE.getOrDefault(topic, topic + '/' + topic));
  }

  private static Optional<String> ofKind(String code) {
    return OF_KINDS.stream()
        .map(folder -> folder + '/' + code)
        .filter(file -> Topics.class.getResource("/wording/" + file + ".properties") != null)
        .findFirst();
  }
}
