package org.staywright.web.start;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.staywright.Effort;
import org.staywright.fit.SampleRange;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Found;
import org.staywright.fit.mounts.MountSearch;
import org.staywright.fit.mounts.Progress;
import org.staywright.fit.mounts.Room;
import org.staywright.fit.mounts.Zones;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.form.mounts.MountsRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.part.Range;
import org.staywright.wording.Wording;

/** Every way to start leads somewhere. */
class WayTest {

  private static final Range RANGE = SampleRange.read();

  @ParameterizedTest
  @EnumSource
  void springsOfTheSampleRangeFitItsJob(Way way) {
    Ranking ranking = Ranking.of(RANGE, JobForm.read(way.job()));
    assertTrue(ranking.fitsTotal() >= 3, way + " has " + ranking.fitsTotal());
  }

  static Stream<Way> some() {
    return Stream.of(Way.values()).limit(Effort.of(Way.values().length, 1));
  }

  @ParameterizedTest
  @MethodSource("some")
  void theFinderFindsArrangementsInItsZones(Way way) {
    MountsRequest asked = MountsRequest.read(new JsonText(way.job(), List.of()));
    Found found = MountSearch.of(RANGE, asked.job(), asked.zones(), 1, Progress.UNSEEN);
    assertTrue(
        found.arrangements().size() >= 3,
        way + " has " + found.arrangements().size() + ", " + found.obstacle());
  }

  @ParameterizedTest
  @EnumSource
  @Tag("full")
  void theFinderFindsArrangementsInTheZonesThatItsGeometryGives(Way way) {
    Job job = JobForm.read(way.job());
    Zones room = Room.of(job.mechanism().rigid().orElseThrow());
    assertTrue(
        room.frame().holds(job.mechanism().rigid().orElseThrow().mounts().frame()), way.code());
    Found found = MountSearch.of(RANGE, job, room, 1, Progress.UNSEEN);
    assertTrue(
        found.arrangements().size() >= 3,
        way + " has " + found.arrangements().size() + ", " + found.obstacle());
  }

  @ParameterizedTest
  @EnumSource
  void itHasADrawingAndWords(Way way) throws Exception {
    try (var drawings = Way.class.getResourceAsStream("/META-INF/resources/img/ways.svg")) {
      String svg = new String(drawings.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
      assertTrue(svg.contains("<symbol id=\"" + way.code() + "\""), way.code());
    }
    assertNotNull(Wording.english().text("way." + way.code()));
    assertNotNull(Wording.english().text("way." + way.code() + ".about"));
  }
}
