package org.staywright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Which room of a floor may use which other of the same floor; {@link ArchitectureTest} says it of
 * the floors. A row names only rooms that stand above it, so that there is no circle.
 */
class RoomsTest {

  private static final String ROOT = "org.staywright.";

  /** More files than this in one folder, and nobody finds his way. */
  private static final int MOST_FILES = 25;

  /** Each room and what it may use of its floor. */
  private static final Map<String, Set<String>> MAY_USE = new LinkedHashMap<>();

  static {
    room("fit.job");
    room("fit.assess", "job");
    room("fit.rank", "job", "assess");
    room("fit.mounts", "job", "assess", "rank");
    room("fit.time", "job", "assess");
    room("fit.clear", "job", "assess");
    room("fit.ideal", "job", "assess", "rank", "mounts");
    room("fit.replace", "job");

    room("caution");
    room("caution.part", "");
    room("caution.fit", "", "part");
    room("caution.replace", "", "part");

    room("form.schema");
    room("form.table");
    room("form.job", "schema", "table");
    room("form.time", "schema", "job");
    room("form.fit", "schema", "job", "time");
    room("form.mounts", "schema", "job", "fit");
    room("form.replace", "schema", "job", "fit");
    room("form.order", "schema");
    room("form.part", "schema", "table");
    room("form.batch", "schema", "fit");
    room("form.stock", "schema", "table", "part");

    room("stock");
    room("stock.intake", "");

    room("job.order");
    room("job", "order");
    room("job.task");
    room("job.batch", "task");

    room("document.draw");
    room("document.sheet", "draw");
    room("document.view", "draw", "sheet");
    room("document.chart", "draw", "view");
    room("document.part", "sheet", "view", "chart");
    room("document.order", "sheet", "view", "part");
    room("document.job", "sheet", "view", "chart", "part", "order");
    room("document.replace", "sheet", "view");

    room("web.shell");
    room("web.api.request");
    room("web.door", "shell", "api.request");
    room("web.audit", "door", "shell");
    room("web.field");
    room("web.chart");
    room("web.query", "shell", "field");
    room("web.fit", "shell", "field", "chart", "query");
    room("web.bench", "shell", "field", "chart", "query", "fit");
    room("web.time", "field", "chart", "query", "fit");
    room("web.job", "shell", "audit", "field", "query", "fit", "bench");
    room("web.start", "shell", "query", "job");
    room("web.mounts", "shell", "field", "chart", "query", "fit", "start");
    room("web.compare", "shell", "field", "chart", "query", "fit", "job");
    room("web.part", "shell", "field", "chart", "fit");
    room("web.replace", "shell", "field", "chart", "query", "fit", "job", "part");
    room("web.stock", "shell", "audit");
    room("web.backup", "shell", "audit", "stock");
    room("web.batch", "shell", "audit", "stock");
    room("web.api", "api.request", "shell", "audit", "fit", "replace");
    room("web.api.document", "api", "api.request", "audit");
    room("web.account", "shell", "audit", "door");
  }

  private static void room(String name, String... used) {
    String floor = floor(name);
    MAY_USE.put(
        name,
        Stream.of(used)
            .map(other -> other.isEmpty() ? floor : floor + "." + other)
            .collect(Collectors.toUnmodifiableSet()));
  }

  private static String floor(String room) {
    return room.split("\\.")[0];
  }

  private static final JavaClasses OURS = Compiled.OURS;

  @TestFactory
  Stream<DynamicTest> roomsUseOnlyWhatTheyMay() {
    return MAY_USE.entrySet().stream()
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row.getKey(), () -> assertEquals(row.getValue(), used(row.getKey()))));
  }

  /** A row that allows more than is used would let an arrow grow unseen. */
  private static Set<String> used(String room) {
    Set<String> used = new TreeSet<>();
    for (JavaClass each : OURS) {
      if (each.getPackageName().equals(ROOT + room)) {
        each.getDirectDependenciesFromSelf().stream()
            .map(arrow -> arrow.getTargetClass().getBaseComponentType().getPackageName())
            .filter(name -> name.startsWith(ROOT))
            .map(name -> name.substring(ROOT.length()))
            .filter(name -> floor(name).equals(floor(room)) && !name.equals(room))
            .forEach(used::add);
      }
    }
    return used;
  }

  @Test
  void everyRoomHasItsRow() {
    Set<String> floors =
        MAY_USE.keySet().stream().map(RoomsTest::floor).collect(Collectors.toSet());
    Set<String> rooms = new TreeSet<>();
    for (JavaClass each : OURS) {
      String name = each.getPackageName();
      boolean described = each.getSimpleName().equals("package-info");
      if (!described
          && name.startsWith(ROOT)
          && floors.contains(floor(name.substring(ROOT.length())))) {
        rooms.add(name.substring(ROOT.length()));
      }
    }
    assertEquals(new TreeSet<>(MAY_USE.keySet()), rooms);
  }

  @Test
  void rowsOnlyNameRoomsAboveThem() {
    List<String> above = new ArrayList<>();
    MAY_USE.forEach(
        (name, used) -> {
          assertTrue(above.containsAll(used), name + " may use " + used + ", above are " + above);
          above.add(name);
        });
  }

  @Test
  void noRoomIsCrowded() throws IOException {
    Map<String, Long> crowded;
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      crowded =
          all.filter(file -> file.toString().endsWith(".java"))
              .collect(Collectors.groupingBy(f -> f.getParent().toString(), Collectors.counting()));
    }
    crowded.values().removeIf(files -> files <= MOST_FILES);
    assertEquals(Map.of(), crowded);
  }
}
