package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Unit;

/** Templates hold no words of their own, and nothing that a strict content policy would block. */
class TemplateTest {

  private static final Path TEMPLATES = Path.of("src/main/resources/templates");

  private static final Pattern COMMENT = Pattern.compile("(?s)\\{!.*?!\\}|<!--.*?-->");

  /** Inner braces first: an expression may hold another in a string. */
  private static final Pattern EXPRESSION = Pattern.compile("\\{[^{}\\s][^{}]*\\}");

  private static final Pattern TAG = Pattern.compile("(?s)<[^>]*>");
  private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

  /** Attributes that people read or hear. */
  private static final Pattern READ =
      Pattern.compile("\\b(?:title|alt|placeholder|aria-label)=\"([^\"]*)\"");

  private static final Pattern INLINE =
      Pattern.compile("<script(?![^>]*\\bsrc=)|<style|\\sstyle=|\\son[a-z]+=|javascript:");

  /** The program's name and the symbols of units are the same in every language. */
  private static final Set<String> SAME_EVERYWHERE =
      Stream.concat(Stream.of("Staywright"), Arrays.stream(Unit.values()).map(Unit::symbol))
          .collect(Collectors.toSet());

  @Test
  void wordsComeByKey() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : templates()) {
      words(Files.readString(file)).forEach(word -> found.add(file + ": " + word));
    }
    assertEquals(List.of(), found);
  }

  @Test
  void scriptAndStyleStandInFilesOfTheirOwn() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : templates()) {
      Matcher inline = INLINE.matcher(COMMENT.matcher(Files.readString(file)).replaceAll(""));
      while (inline.find()) {
        found.add(file + ": " + inline.group());
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void wordsAreRecognised() {
    assertEquals(List.of(), words("<p class=\"big\">{say.text('fit.none')} {#if x}{/if} mm</p>"));
    assertFalse(words("<p>Nothing fits</p>").isEmpty());
    assertFalse(words("<img alt=\"a lid\">").isEmpty());
  }

  private static List<String> words(String template) {
    String text = COMMENT.matcher(template).replaceAll("");
    for (String before = ""; !before.equals(text); ) {
      before = text;
      text = EXPRESSION.matcher(text).replaceAll("");
    }
    List<String> found = new ArrayList<>();
    for (Matcher read = READ.matcher(text); read.find(); ) {
      collect(read.group(1), found);
    }
    collect(TAG.matcher(text).replaceAll(" ").replaceAll("&\\w+;", " "), found);
    return found;
  }

  private static void collect(String text, List<String> found) {
    for (Matcher word = WORD.matcher(text); word.find(); ) {
      if (!SAME_EVERYWHERE.contains(word.group())) {
        found.add(word.group());
      }
    }
  }

  private static List<Path> templates() throws IOException {
    if (!Files.exists(TEMPLATES)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(TEMPLATES)) {
      return all.filter(path -> path.toString().endsWith(".html")).sorted().toList();
    }
  }
}
