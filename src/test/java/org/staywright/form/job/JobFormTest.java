package org.staywright.form.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Still;
import org.staywright.form.Jobs;
import org.staywright.form.schema.FlatForm;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Seal;
import org.staywright.part.Family;
import org.staywright.part.FittingType;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

class JobFormTest {

  @Test
  void readsTheWholeJobInSi() {
    Job job = JobForm.read(Jobs.lid());
    HingedFlap flap = (HingedFlap) job.mechanism();
    assertEquals("Floor locker lid", job.name());
    assertEquals(18, flap.masses().nominal());
    assertEquals(18 * 1.05, flap.masses().heaviest(), 1e-12);
    assertEquals(18 * 0.95, flap.masses().lightest(), 1e-12);
    assertEquals(0.41, flap.centreOfMass().x(), 1e-12);
    assertEquals(1, flap.sense());
    assertEquals(Math.toRadians(80), flap.end(), 1e-12);
    assertEquals(-0.065, flap.mounts().frame().y(), 1e-12);
    assertEquals(List.of(1, 2), job.springCounts());
    assertEquals(new Job.FittingWish(FittingType.BALL_SOCKET, null), job.rodEnd());
    assertEquals(263.15, job.conditions().coldest(), 1e-9);
    assertEquals(0.005, job.requirements().compressedReserve(), 1e-12);
    assertEquals(Set.of(Family.GAS_SPRING), job.filters().families());
    assertNull(job.filters().finish());
    assertEquals(RankBy.BALANCED, job.rankBy());
  }

  @Test
  void theLeastJobIsTheWholeOneByItsDefaults() {
    ObjectNode least = JobForm.withDefaults(Jobs.tree(Jobs.LEAST));
    ObjectNode whole = JobForm.withDefaults(Jobs.lid());
    assertEquals(whole.put("name", ""), least);
    assertEquals(whole, JobForm.withDefaults(whole), "normalising twice changes nothing");
  }

  @Test
  void readsWhatElseIsAskedInSi() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/requirements")
        .put("maxHandOpenN", 80)
        .put("risesFromDeg", 30)
        .put("staysPutFromDeg", 10)
        .put("staysPutToDeg", 20)
        .put("maxLatchPushN", 0)
        .put("overCentreByDeg", 15);
    lid.withObject("/load").put("sealMomentNm", -4).put("sealAngleDeg", 3);
    Job job = JobForm.read(lid);
    assertEquals(80, job.requirements().handOpenLimit());
    assertEquals(50, job.requirements().handCloseLimit());
    assertEquals(new Still(Unit.DEGREE.si(10), Unit.DEGREE.si(20)), job.requirements().still());
    assertEquals(Unit.DEGREE.si(30), job.requirements().limit(Criterion.RISES));
    assertEquals(0, job.requirements().limit(Criterion.LATCH_PUSH));
    assertEquals(Unit.DEGREE.si(15), job.requirements().limit(Criterion.OVER_CENTRE));
    assertEquals(new Seal(-4, Unit.DEGREE.si(3)), ((HingedFlap) job.mechanism()).seal());
  }

  @Test
  void whatMakesNoSenseForALoadIsAFault() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/requirements")
        .put("risesFromMm", 30)
        .put("staysPutFromDeg", 30)
        .put("staysPutToDeg", 20);
    assertEquals(
        Map.of(
            "#/requirements/risesFromMm", "not-with-this-load",
            "#/requirements/staysPutFromDeg", "out-of-order"),
        codes(lid));
  }

  @Test
  void theLightestLoadSetsTheLightMass() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("lightestMassKg", 10);
    assertEquals(9.5, ((HingedFlap) JobForm.read(lid).mechanism()).masses().lightest(), 1e-12);
  }

  @Test
  void reportsEveryFaultAtOnce() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", -3).put("opens", "sideways").put("colour", "red");
    lid.withObject("/load").remove("openingAngleDeg");
    lid.withObject("/conditions").put("minC", 30);
    lid.withObject("/mounts").put("rodEndAt", true);
    lid.putArray("springCounts").add(1).add(1).add(2.5);
    lid.put("limit", new BigDecimal("1e999999999"));
    assertEquals(
        Map.of(
            "#/load/massKg", "out-of-bounds",
            "#/load/opens", "not-a-choice",
            "#/load/colour", "unknown-field",
            "#/load/openingAngleDeg", "missing",
            "#/conditions/minC", "out-of-order",
            "#/mounts/rodEndAt", "not-a-choice",
            "#/springCounts/1", "listed-twice",
            "#/springCounts/2", "not-whole",
            "#/limit", "out-of-bounds"),
        codes(lid));
  }

  @Test
  void findsMountsThatCoincideOrPassThroughEachOther() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/mounts/movingMm").put("x", 15).put("y", -65);
    assertEquals(Map.of("#/mounts/movingMm", "mounts-coincide"), codes(lid));
    lid.withObject("/mounts/frameMm").put("x", 0).put("y", 300);
    lid.withObject("/mounts/movingMm").put("x", 300).put("y", 0);
    lid.withObject("/load").put("openingAngleDeg", 120);
    assertEquals(Map.of("#/mounts/movingMm", "mounts-pass-through"), codes(lid));
    lid.withObject("/load").put("openingAngleDeg", 80);
    assertEquals(Map.of(), codes(lid));
  }

  @Test
  void geometryIsCheckedBesideOtherFaults() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", "heavy").withObject("/handleMm").put("x", 0);
    assertEquals(
        Map.of("#/load/massKg", "not-a-number", "#/load/handleMm", "handle-at-hinge"), codes(lid));
  }

  @Test
  void saysWhatAnotherLoadLacks() {
    ObjectNode lid = Jobs.lid();
    lid.remove("mounts");
    lid.putObject("load").put("type", "seat-column").put("heightTravelMm", 100);
    assertEquals(
        Map.of("#/load/seatMassKg", "missing", "#/load/sitterMassKg", "missing"), codes(lid));
    lid.putArray("filters").add(1);
    lid.putObject("load");
    assertEquals(
        Map.of("#/mounts", "missing", "#/load/type", "missing", "#/filters", "not-an-object"),
        codes(lid));
  }

  @Test
  void takesAFittingByItsNumberButNoStud() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/fittings").put("rodEnd", "KX-4471").put("tubeEnd", "ball-stud");
    assertEquals(Map.of("#/fittings/tubeEnd", "not-of-the-form"), codes(lid));
    lid.withObject("/fittings").put("tubeEnd", "eyelet");
    Job job = JobForm.read(lid);
    assertEquals(new Job.FittingWish(null, "KX-4471"), job.rodEnd());
    assertEquals(new Job.FittingWish(FittingType.EYELET, null), job.tubeEnd());
  }

  @Test
  void refusesTextThatNoDatabaseTakes() {
    ObjectNode lid = Jobs.lid().put("name", "a\u0000b");
    assertEquals(Map.of("#/name", "control-character"), codes(lid));
    assertEquals(Map.of("#/name", "control-character"), codes(lid.put("name", "\ud800")));
    assertEquals(Map.of("#/name", "too-long"), codes(lid.put("name", "x".repeat(201))));
  }

  @Test
  void aFlatFormGivesTheSameJob() {
    Map<String, List<String>> flat =
        Map.ofEntries(
            Map.entry("name", List.of("Floor locker lid")),
            Map.entry("load.type", List.of("hinged-flap")),
            Map.entry("load.massKg", List.of(" 18 ")),
            Map.entry("load.lightestMassKg", List.of("")),
            Map.entry("load.centreOfMassMm.x", List.of("410")),
            Map.entry("load.centreOfMassMm.y", List.of("15")),
            Map.entry("load.handleMm.x", List.of("800")),
            Map.entry("load.handleMm.y", List.of("0")),
            Map.entry("load.opens", List.of("counterclockwise")),
            Map.entry("load.openingAngleDeg", List.of("80")),
            Map.entry("mounts.frameMm.x", List.of("15")),
            Map.entry("mounts.frameMm.y", List.of("−65")),
            Map.entry("mounts.movingMm.x", List.of("360")),
            Map.entry("mounts.movingMm.y", List.of("-11")),
            Map.entry("springCounts", List.of("1", "2")));
    assertEquals(
        JobForm.withDefaults(Jobs.lid()), JobForm.withDefaults(FlatForm.tree(JobShape.JOB, flat)));
  }

  @Test
  void aFlatFormLeavesWhatIsNoNumberToBeReported() {
    ObjectNode tree =
        FlatForm.tree(
            JobShape.JOB,
            Map.of(
                "load.massKg", List.of("18,5"),
                "load.type", List.of("hinged-flap"),
                "load.tiltDeg", List.of("steep"),
                "limit", List.of("20", "30"),
                "filters.inStockOnly", List.of("perhaps"),
                "a.b.c", List.of("1")));
    Map<String, String> codes = codes(tree);
    assertEquals("decimal-comma", codes.get("#/load/massKg"));
    assertEquals("not-a-number", codes.get("#/load/tiltDeg"));
    assertEquals("not-a-number", codes.get("#/limit"));
    assertEquals("not-a-flag", codes.get("#/filters/inStockOnly"));
    assertEquals("unknown-field", codes.get("#/a.b.c"));
  }

  @Test
  void aRefusalCarriesValueAndBound() {
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("massKg", -3);
    Fault fault = assertThrows(Refusal.class, () -> JobForm.read(lid)).faults().get(0);
    assertEquals("#/load/massKg", fault.where());
    assertEquals(-3, fault.value());
    assertEquals("> 0 and ≤ 2000 kg", fault.bound());
  }

  private static Map<String, String> codes(ObjectNode document) {
    List<Fault> faults = JobForm.faults(document);
    assertTrue(faults.stream().map(Fault::where).distinct().count() == faults.size());
    return faults.stream().collect(Collectors.toMap(Fault::where, Fault::code));
  }
}
