package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is built names what it is made of, and that holds nothing that an advisory warns of. */
class BillOfMaterialsIT {

  private static final Path PROGRAM = Path.of("target", "quarkus-app");

  /** For those who write the program. */
  private static final Set<String> NOT_SHIPPED = Set.of("io.quarkus:quarkus-ide-launcher");

  /** Group and name, or for what is brought along the name alone, to version. */
  private static final Map<String, String> SHIPPED = new TreeMap<>();

  /** Its plugin works with a network only; Maven leaves it out where there is none. */
  @BeforeAll
  static void read() throws IOException {
    assumeFalse(
        "offline true".equals(System.getProperty("staywright.network")), "built without a network");
    for (JsonNode each : components("bom.json")) {
      String name = each.path("group").asText() + ":" + each.path("name").asText();
      SHIPPED.put(name, each.path("version").asText());
    }
    for (JsonNode each : components("brought-along.cdx.json")) {
      SHIPPED.put(each.path("name").asText(), each.path("version").asText());
    }
  }

  private static JsonNode json(String file) throws IOException {
    return new ObjectMapper().readTree(PROGRAM.resolve(file).toFile());
  }

  private static JsonNode components(String file) throws IOException {
    return json(file).path("components");
  }

  @Test
  void namesEveryLibraryThatShipsAndNoOther() throws IOException {
    Set<String> named = new TreeSet<>();
    SHIPPED.forEach(
        (name, version) -> {
          if (name.contains(":") && !NOT_SHIPPED.contains(name)) {
            named.add(name.replace(':', '.') + "-" + version + ".jar");
          }
        });
    Set<String> there = new TreeSet<>();
    for (String folder : List.of("main", "boot")) {
      try (Stream<Path> files = Files.list(PROGRAM.resolve("lib").resolve(folder))) {
        files.map(file -> file.getFileName().toString()).forEach(there::add);
      }
    }
    there.removeIf(file -> !file.endsWith(".jar"));
    assertEquals(there, named);
  }

  @Test
  void refersToWhatNoRepositoryOfMavenHas() throws IOException {
    JsonNode reference =
        json("bom.json").path("metadata").path("component").path("externalReferences").path(0);
    assertEquals("bom", reference.path("type").asText());
    assertEquals("brought-along.cdx.json", reference.path("url").asText());
    Path resources = Path.of("src/main/resources");
    for (JsonNode library : components("brought-along.cdx.json")) {
      for (JsonNode file : library.path("components")) {
        Path path = resources.resolve(file.path("name").asText());
        List<String> sums = Files.readAllLines(path.resolveSibling("SHA256SUMS.txt"));
        String line =
            file.path("hashes").path(0).path("content").asText() + "  " + path.getFileName();
        assertTrue(sums.contains(line), line);
      }
    }
  }

  @Test
  void holdsNoVersionThatAnAdvisoryWarnsOf() {
    List<List<String>> rows = SecurityReport.rows("Versions not to be used");
    assertFalse(rows.isEmpty());
    for (List<String> row : rows) {
      String below = row.get(1).replace("below ", "");
      for (Map.Entry<String, String> each : shipped(row.get(0))) {
        assertTrue(
            compare(each.getValue(), below) >= 0, () -> each + ", but " + row.get(2) + " is in it");
      }
    }
  }

  /** So that a row goes as soon as it need no longer be there. */
  @Test
  void holdsEachVersionOfWhichItIsSaidWhyItStays() {
    for (List<String> row : SecurityReport.rows("Known, and why it stays")) {
      assertEquals(
          List.of(row.get(1)),
          shipped(row.get(0)).stream().map(Map.Entry::getValue).toList(),
          row::toString);
    }
  }

  /** All of a group where no name follows. */
  private static List<Map.Entry<String, String>> shipped(String library) {
    String name = library.replace("`", "");
    List<Map.Entry<String, String>> found = new ArrayList<>();
    for (Map.Entry<String, String> each : SHIPPED.entrySet()) {
      if (each.getKey().equals(name) || each.getKey().startsWith(name + ":")) {
        found.add(each);
      }
    }
    assertFalse(found.isEmpty(), () -> "no " + name + " ships");
    return found;
  }

  @Test
  void comparesVersionsByTheirNumbers() {
    assertTrue(compare("4.1.139.Final", "4.1.138.Final") > 0);
    assertTrue(compare("2.21.5", "2.21.10") < 0);
    assertTrue(compare("3.33.3.3", "3.33.3") > 0);
    assertEquals(0, compare("7.2.14.Final", "7.2.14"));
  }

  private static int compare(String one, String other) {
    List<Integer> left = numbers(one);
    List<Integer> right = numbers(other);
    for (int at = 0; at < Math.max(left.size(), right.size()); at++) {
      int difference =
          (at < left.size() ? left.get(at) : 0) - (at < right.size() ? right.get(at) : 0);
      if (difference != 0) {
        return difference;
      }
    }
    return 0;
  }

  private static List<Integer> numbers(String version) {
    return Stream.of(version.split("[.-]"))
        .takeWhile(part -> part.matches("\\d+"))
        .map(Integer::valueOf)
        .toList();
  }
}
