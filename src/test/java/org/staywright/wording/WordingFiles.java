package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.staywright.unit.Language;

/** The files of sentences as they lie in their folders. */
public final class WordingFiles {

  static final Path FOLDER = Path.of("src/main/resources/wording");

  private static final Set<String> KINDS = Set.of("mechanism", "spring");

  private static final String ENDING = ".properties";

  private WordingFiles() {}

  /** Those of the first language by topic. */
  public static SortedMap<String, Path> first() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      SortedMap<String, Path> topics = new TreeMap<>();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = file.getFileName().toString().replace(ENDING, "");
        boolean other =
            Stream.of(Language.values())
                .map(Language::mark)
                .anyMatch(mark -> !mark.isEmpty() && name.endsWith(mark));
        if (!other) {
          assertNull(topics.put(name, file), name + " is there twice");
        }
      }
      return topics;
    }
  }

  /** Names of the files that say what is said of one mechanism or family alone. */
  public static List<String> ofKinds() throws IOException {
    return first().entrySet().stream()
        .filter(file -> KINDS.contains(file.getValue().getParent().getFileName().toString()))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The same file in a language. */
  static Path in(Language language, Path first) {
    String name = first.getFileName().toString().replace(ENDING, language.mark() + ENDING);
    return first.resolveSibling(name);
  }
}
