package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SecurityReportTest {

  private static final Pattern TEST = Pattern.compile("`(\\w+(?:Test|IT))`");
  private static final Pattern STATE = Pattern.compile("(held|meant|not here|open): .+");
  private static final List<String> SOURCES = List.of("src/test/java", "src/browser-test/java");

  /** The chapters and numbers of levels 1 and 2, as the standard counts them. */
  private static final Path NUMBERS = Path.of("src/test/resources/asvs-5.0.0-levels-1-and-2.txt");

  @Test
  void everyTestItNamesIsThere() throws IOException {
    Set<String> there = new TreeSet<>();
    for (String root : SOURCES) {
      try (Stream<Path> files = Files.walk(Path.of(root))) {
        files.forEach(file -> there.add(file.getFileName().toString().replace(".java", "")));
      }
    }
    Set<String> named =
        TEST.matcher(SecurityReport.text())
            .results()
            .map(found -> found.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(named.size() > 20, named::toString);
    named.removeAll(there);
    assertEquals(Set.of(), named);
  }

  @Test
  void everyRequirementOfLevelsOneAndTwoHasItsRowOnce() throws IOException {
    List<String> asked = new ArrayList<>();
    for (String line : Files.readAllLines(NUMBERS)) {
      if (!line.startsWith("#")) {
        String[] words = line.split(": ");
        numbers(words[1]).forEach(number -> asked.add(words[0] + "." + number));
      }
    }
    assertEquals(253, asked.size());
    List<String> told = new ArrayList<>();
    SecurityReport.rows("Checklist").forEach(row -> told.addAll(requirements(row.get(0))));
    assertEquals(asked.stream().sorted().toList(), told.stream().sorted().toList());
  }

  @Test
  void everyRowSaysHowItStands() {
    for (List<String> row : SecurityReport.rows("Checklist")) {
      assertEquals(3, row.size(), row::toString);
      assertTrue(STATE.matcher(row.get(2)).matches(), row::toString);
      boolean held = row.get(2).startsWith("held: ");
      assertEquals(held, TEST.matcher(row.get(2)).find() && held, row::toString);
    }
  }

  /** "1.2.1–3, 1.2.5" is four. */
  private static List<String> requirements(String cell) {
    List<String> all = new ArrayList<>();
    for (String each : cell.split(", ")) {
      String section = each.replaceFirst("\\.[0-9–]+$", "");
      String last = each.substring(section.length() + 1);
      numbers(last.replace('–', '-')).forEach(number -> all.add(section + "." + number));
    }
    return all;
  }

  private static IntStream numbers(String range) {
    List<Integer> ends =
        Pattern.compile("\\d+")
            .matcher(range)
            .results()
            .map(MatchResult::group)
            .map(Integer::valueOf)
            .toList();
    return IntStream.rangeClosed(ends.get(0), ends.get(ends.size() - 1));
  }
}
