package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What no compiler checks of the sources. */
class SourceTest {

  private static final Path SOURCES = Path.of("src");
  private static final int MOST_LINES = 300;

  /** Imports are for the compiler. */
  private static final String IMPORT = "import ";

  /** Where code speaks to people, and must do so by key; elsewhere are queries and annotations. */
  private static final List<String> SPEAKING =
      List.of("unit", "gas", "spring", "mechanism", "part", "motion", "fit", "caution", "document");

  private static final Pattern TEXT = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");
  private static final Pattern SENTENCE = Pattern.compile("\\p{L}{2,} \\p{L}+ \\p{L}+");
  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");

  /** Messages of exceptions are for those who maintain the program. */
  private static final Pattern THROWN = Pattern.compile("(?s)new \\w+(Exception|Error)\\(.*?;");

  /** Names of sources that an expert reads are the same in every language. */
  private static final Pattern SOURCE = Pattern.compile("common practice, no source");

  @Test
  void noFileIsLong() throws IOException {
    List<String> tooLong = new ArrayList<>();
    for (Path file : files(SOURCES, ".java")) {
      long lines =
          Files.readAllLines(file).stream().filter(line -> !line.startsWith(IMPORT)).count();
      if (lines > MOST_LINES) {
        tooLong.add(file + ": " + lines);
      }
    }
    assertEquals(List.of(), tooLong);
  }

  /** Untagged, it would be among those that start nothing and run side by side. */
  @Test
  void everyTestThatStartsTheProgramIsTagged() throws IOException {
    List<String> untagged = new ArrayList<>();
    for (Path file : files(SOURCES, "Test.java")) {
      String source = Files.readString(file);
      if (source.contains("\n@QuarkusTest\n") && !source.contains("\n@Tag(\"")) {
        untagged.add(file.toString());
      }
    }
    assertEquals(List.of(), untagged);
  }

  @Test
  void codeHoldsNoSentences() throws IOException {
    List<String> found = new ArrayList<>();
    for (String name : SPEAKING) {
      Path folder = SOURCES.resolve("main/java/org/staywright").resolve(name);
      for (Path file : files(folder, ".java")) {
        found.addAll(sentences(file, Files.readString(file)));
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void sentencesAreRecognised() {
    Path file = Path.of("Some.java");
    assertFalse(sentences(file, "x = \"Never open a spring\";").isEmpty());
    assertEquals(List.of(), sentences(file, "// \"Never open a spring\"\nx = \"gas-spring\";"));
    assertEquals(
        List.of(),
        sentences(file, "throw new IllegalStateException(\"read the file first\" + x);"));
  }

  private static List<String> sentences(Path file, String source) {
    String code = COMMENT.matcher(source).replaceAll("");
    code = THROWN.matcher(code).replaceAll("");
    List<String> found = new ArrayList<>();
    for (Matcher text = TEXT.matcher(code); text.find(); ) {
      String plain = SOURCE.matcher(text.group()).replaceAll("");
      if (SENTENCE.matcher(plain).find()) {
        found.add(file + ": " + text.group());
      }
    }
    return found;
  }

  private static List<Path> files(Path folder, String ending) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(path -> path.toString().endsWith(ending)).sorted().toList();
    }
  }
}
