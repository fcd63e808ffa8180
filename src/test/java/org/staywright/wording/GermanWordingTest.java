package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The German sentences beside the English ones, topic by topic. */
class GermanWordingTest {

  private static final Path FOLDER = Path.of("src/main/resources/wording");

  /** The description of the API is one document for all, in English. */
  private static final Set<String> ENGLISH_ONLY = Set.of("api");

  /** A gap with its number and whether it chooses between words. */
  private static final Pattern GAP = Pattern.compile("\\{(\\d+)(,choice)?");

  private static final Pattern BRACKETS = Pattern.compile("\\[[^]]*]");

  /** A quote alone would swallow the gaps behind it. */
  private static final Pattern LONE_QUOTE = Pattern.compile("(?<!')'(?:'')*(?!')");

  private static final Pattern WORD = Pattern.compile("\\p{L}");

  /** The phrases of RFC 9110, and the languages, each in its own. */
  private static final Pattern SAID_ALIKE =
      Pattern.compile("problem\\.title\\.\\d+|preference\\.(?:english|german)");

  /** What the two languages write alike. */
  private static final Set<String> ALIKE =
      Set.of(
          "Gas",
          "Import",
          "Name",
          "Pause",
          "Progression F2/F1",
          "Transport",
          "USA: 49 CFR 173.306(f)(4)",
          "x",
          "y",
          "x {0}, y {1}",
          "x {0}, y {1} [mm]",
          "N",
          "lbf",
          "kgf",
          "mm · kg · °C",
          "in · lb · °F");

  static List<String> topics() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<String> topics =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".properties") && !name.endsWith("_de.properties"))
              .map(name -> name.replace(".properties", ""))
              .filter(topic -> !ENGLISH_ONLY.contains(topic))
              .sorted()
              .toList();
      assertTrue(topics.containsAll(List.of("caution", "document", "fit", "page")), "" + topics);
      return topics;
    }
  }

  @ParameterizedTest
  @MethodSource("topics")
  void hasTheKeysOfTheEnglishTopic(String topic) throws IOException {
    assertEquals(english(topic).keySet(), german(topic).keySet());
  }

  @ParameterizedTest
  @MethodSource("topics")
  void hasTheGapsAndUnitsOfEachEnglishSentence(String topic) throws IOException {
    Map<String, String> german = german(topic);
    english(topic)
        .forEach(
            (key, sentence) -> {
              String said = german.get(key);
              assertEquals(gaps(sentence), gaps(said), key);
              assertEquals(brackets(sentence), brackets(said), key);
            });
  }

  @ParameterizedTest
  @MethodSource("topics")
  void readsAsAPattern(String topic) throws IOException {
    german(topic)
        .forEach(
            (key, sentence) -> {
              assertFalse(LONE_QUOTE.matcher(sentence).find(), key);
              MessageFormat pattern = new MessageFormat(sentence, Locale.GERMAN);
              for (int count = 0; count < 6; count++) {
                Object[] values = new Object[12];
                Arrays.fill(values, count);
                assertFalse(pattern.format(values).contains("{"), key);
              }
            });
  }

  @ParameterizedTest
  @MethodSource("topics")
  void isNotLeftInEnglish(String topic) throws IOException {
    Map<String, String> english = english(topic);
    List<String> left = new ArrayList<>();
    german(topic)
        .forEach(
            (key, sentence) -> {
              boolean words = WORD.matcher(bare(sentence)).find();
              if (words
                  && sentence.equals(english.get(key))
                  && !ALIKE.contains(sentence)
                  && !SAID_ALIKE.matcher(key).matches()) {
                left.add(key);
              }
            });
    assertEquals(List.of(), left);
  }

  private static Set<String> gaps(String sentence) {
    return new TreeSet<>(GAP.matcher(sentence).results().map(MatchResult::group).toList());
  }

  /** Decimals have a comma in German. */
  private static List<String> brackets(String sentence) {
    return BRACKETS
        .matcher(sentence)
        .results()
        .map(bracket -> bracket.group().replace(',', '.'))
        .sorted()
        .toList();
  }

  private static String bare(String sentence) {
    return BRACKETS.matcher(sentence).replaceAll("").replaceAll("\\{\\d+}", "");
  }

  private static Map<String, String> english(String topic) throws IOException {
    return sentences(topic + ".properties");
  }

  private static Map<String, String> german(String topic) throws IOException {
    return sentences(topic + "_de.properties");
  }

  /** The sentences of a file, which are one line each; a key that stands twice is refused. */
  private static Map<String, String> sentences(String file) throws IOException {
    Path path = FOLDER.resolve(file);
    assertTrue(Files.exists(path), path + " is missing");
    Map<String, String> sentences = new TreeMap<>();
    Set<String> twice = new HashSet<>();
    for (String line : Files.readAllLines(path)) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] parts = line.split("\\s*=\\s*", 2);
        if (sentences.put(parts[0], parts[1]) != null) {
          twice.add(parts[0]);
        }
      }
    }
    assertEquals(Set.of(), twice, file);
    return sentences;
  }
}
