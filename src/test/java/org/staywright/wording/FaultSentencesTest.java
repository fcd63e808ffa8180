package org.staywright.wording;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.unit.Fault;

class FaultSentencesTest {

  private static final Pattern RAISED =
      Pattern.compile("\\b(?:new Fault|refused|fault)\\([^;{]*?\"([a-z]+(?:-[a-z]+)*)\"\\)");

  @Test
  void everyFaultThatIsRaisedHasItsSentence() throws IOException {
    Set<String> codes = new TreeSet<>();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(p -> p.toString().endsWith(".java")).toList()) {
        Matcher raised = RAISED.matcher(Files.readString(source));
        while (raised.find()) {
          codes.add(raised.group(1));
        }
      }
    }
    assertTrue(
        codes.contains("mounts-pass-through") && codes.contains("missing"), codes.toString());
    for (String code : codes) {
      String sentence = Wording.english().fault(new Fault("#/load/massKg", 3, "> 5 kg", code));
      assertFalse(sentence.isBlank(), code);
    }
  }
}
