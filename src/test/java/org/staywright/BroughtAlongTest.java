package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Scripts of others that no repository of Maven has in the version wanted: each in a folder named
 * by name and version, with its licence and with SHA256SUMS.txt, as {@code sha256sum -c} reads it.
 */
class BroughtAlongTest {

  private static final Path LIB = Path.of("src/main/resources/META-INF/resources/lib");
  private static final String SUMS = "SHA256SUMS.txt";

  static List<Path> folders() throws IOException {
    return in(LIB);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void isByteForByteWhatItsSumsSay(Path folder) throws Exception {
    Map<String, String> noted =
        Files.readAllLines(folder.resolve(SUMS)).stream()
            .map(line -> line.split(" {2}", 2))
            .collect(Collectors.toMap(words -> words[1], words -> words[0]));
    Map<String, String> found = new TreeMap<>();
    for (Path file : in(folder)) {
      if (!file.endsWith(SUMS)) {
        found.put(file.getFileName().toString(), sha256(file));
      }
    }
    assertEquals(new TreeMap<>(noted), found);
    assertTrue(found.containsKey("LICENSE.txt"), () -> "no licence in " + folder);
  }

  /** The script says at its head which version it is, and some page asks for it. */
  @ParameterizedTest
  @MethodSource("folders")
  void isOfTheVersionThatItsFolderSays(Path folder) throws IOException {
    String name = folder.getFileName().toString();
    String version = name.substring(name.lastIndexOf('-') + 1);
    for (Path script : in(folder)) {
      if (script.toString().endsWith(".js")) {
        String head = Files.readString(script).lines().findFirst().orElse("");
        assertTrue(head.contains("(v" + version + ")"), head);
        String address = "\"/lib/" + name + "/" + script.getFileName() + "\"";
        assertTrue(asked(address), () -> "no page asks for " + address);
      }
    }
  }

  private static boolean asked(String address) throws IOException {
    try (Stream<Path> templates = Files.walk(Path.of("src/main/resources/templates"))) {
      for (Path each : templates.filter(Files::isRegularFile).toList()) {
        if (Files.readString(each).contains(address)) {
          return true;
        }
      }
    }
    return false;
  }

  private static String sha256(Path file) throws IOException, NoSuchAlgorithmException {
    return HexFormat.of()
        .formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
  }

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }
}
