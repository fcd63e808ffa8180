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
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.unit.Language;

/** Every language beside the first, topic by topic; and that a further one is no work elsewhere. */
class LanguagesTest {

  /** The description of the API is one document for all, in English. */
  private static final Set<String> ENGLISH_ONLY = Set.of("api");

  /** A gap with its number and whether it chooses between words. */
  private static final Pattern GAP = Pattern.compile("\\{(\\d+)(,choice)?");

  private static final Pattern BRACKETS = Pattern.compile("\\[[^]]*]");

  /** A quote alone would swallow the gaps behind it. */
  private static final Pattern LONE_QUOTE = Pattern.compile("(?<!')'(?:'')*(?!')");

  private static final Pattern WORD = Pattern.compile("\\p{L}");

  /** The phrases of RFC 9110. */
  private static final Pattern SAID_ALIKE = Pattern.compile("problem\\.title\\.\\d+");

  /** A language by its tag, its name or the end of its files. */
  private static final Pattern NAMED =
      Pattern.compile("[\"'`]de[\"'`-]|_de\\b|\\b(?:german|deutsch)\\b", Pattern.CASE_INSENSITIVE);

  private static final Pattern TEXT = Pattern.compile("\\.(?:java|html|js|css|svg|xml)$");

  private static final Pattern COMMENT = Pattern.compile("^\\s*(?:/\\*\\*|\\*|//).*");

  /** What other languages write as the first does. */
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

  static Stream<Arguments> others() throws IOException {
    Set<String> topics = new TreeSet<>(WordingFiles.first().keySet());
    assertTrue(topics.containsAll(List.of("caution", "document", "fit", "page")), "" + topics);
    topics.removeAll(ENGLISH_ONLY);
    return Stream.of(Language.values())
        .filter(language -> language != Language.first())
        .flatMap(language -> topics.stream().map(topic -> Arguments.of(language, topic)));
  }

  @ParameterizedTest
  @MethodSource("others")
  void hasTheKeysOfTheFirst(Language language, String topic) throws IOException {
    assertEquals(first(topic).keySet(), said(language, topic).keySet());
  }

  @ParameterizedTest
  @MethodSource("others")
  void hasTheGapsAndUnitsOfEachSentence(Language language, String topic) throws IOException {
    Map<String, String> others = said(language, topic);
    first(topic)
        .forEach(
            (key, sentence) -> {
              String said = others.get(key);
              assertEquals(gaps(sentence), gaps(said), key);
              assertEquals(brackets(sentence), brackets(said), key);
            });
  }

  @ParameterizedTest
  @MethodSource("others")
  void readsAsAPattern(Language language, String topic) throws IOException {
    said(language, topic)
        .forEach(
            (key, sentence) -> {
              assertFalse(LONE_QUOTE.matcher(sentence).find(), key);
              MessageFormat pattern = new MessageFormat(sentence, language.locale());
              for (int count = 0; count < 6; count++) {
                Object[] values = new Object[12];
                Arrays.fill(values, count);
                assertFalse(pattern.format(values).contains("{"), key);
              }
            });
  }

  @ParameterizedTest
  @MethodSource("others")
  void isNotLeftInTheFirstLanguage(Language language, String topic) throws IOException {
    Map<String, String> first = first(topic);
    List<String> left = new ArrayList<>();
    said(language, topic)
        .forEach(
            (key, sentence) -> {
              boolean words = WORD.matcher(bare(sentence)).find();
              if (words
                  && sentence.equals(first.get(key))
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

  /** Some have a comma before decimals. */
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

  private static Map<String, String> first(String topic) throws IOException {
    return said(Language.first(), topic);
  }

  /** The sentences of a file, which are one line each; a key that stands twice is refused. */
  private static Map<String, String> said(Language language, String topic) throws IOException {
    Path path = WordingFiles.in(language, WordingFiles.first().get(topic));
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
    assertEquals(Set.of(), twice, path.toString());
    return sentences;
  }

  @Test
  void everySentenceStandsWhereItIsLookedFor() throws IOException {
    for (Path file : WordingFiles.first().values()) {
      String name = WordingFiles.FOLDER.relativize(file).toString().replace(".properties", "");
      for (String key : first(file.getFileName().toString().replace(".properties", "")).keySet()) {
        assertEquals(name, Topics.file(key), key);
      }
    }
  }

  @Test
  void everyFolderHasTheNameOfARoom() throws IOException {
    Set<String> rooms = folders(Path.of("src/main/java/org/staywright"));
    assertEquals(Set.of(), without(folders(WordingFiles.FOLDER), rooms));
  }

  private static Set<String> without(Set<String> names, Set<String> known) {
    Set<String> left = new TreeSet<>(names);
    left.removeAll(known);
    return left;
  }

  /** Names of all folders below one. */
  private static Set<String> folders(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(each -> Files.isDirectory(each) && !each.equals(root))
          .map(each -> each.getFileName().toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void aLanguageIsOneLineBesideItsFiles() throws IOException {
    List<String> places = new ArrayList<>();
    for (String folder : List.of("java", "resources/templates", "resources/META-INF")) {
      try (Stream<Path> files = Files.walk(Path.of("src/main", folder))) {
        for (Path file : files.filter(each -> TEXT.matcher(each.toString()).find()).toList()) {
          for (String line : Files.readAllLines(file)) {
            String code = COMMENT.matcher(line).replaceAll("");
            if (NAMED.matcher(code).find()) {
              places.add(file.getFileName() + ": " + line.strip());
            }
          }
        }
      }
    }
    assertEquals(List.of("Language.java: GERMAN(\"de\");"), places);
  }
}
