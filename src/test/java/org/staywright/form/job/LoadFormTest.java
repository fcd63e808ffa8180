package org.staywright.form.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.staywright.form.Jobs;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Masses;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.unit.Fault;

/** The types of load beside the flap: their fields, bounds, defaults and faults. */
class LoadFormTest {

  @Test
  void readsAStraightLiftInSi() {
    StraightLift lift = (StraightLift) JobForm.read(Jobs.tree(Jobs.LIFT)).mechanism();
    assertEquals(new Masses(14, 14 * 1.02, 13 * 0.98), lift.masses());
    assertEquals(0.2, lift.end(), 1e-12);
    assertEquals(Math.PI / 2, lift.direction(), 1e-12);
    assertEquals(10, lift.friction());
    assertEquals(new Point(0.1, 0.46), lift.mounts().moving());
  }

  @Test
  void readsAForceProfileInSi() {
    ForceProfile profile = (ForceProfile) JobForm.read(Jobs.tree(Jobs.PROFILE)).mechanism();
    assertEquals(
        List.of(
            new ForceProfile.Point(0.4, 385),
            new ForceProfile.Point(0.49, 332),
            new ForceProfile.Point(0.55, 275.5)),
        profile.points());
  }

  @Test
  void leavesOnlyToleranceAndFrictionOfALiftToDefaults() {
    ObjectNode lift = Jobs.tree(Jobs.LIFT);
    lift.withObject("/load").retain("type", "massKg", "travelMm", "directionDeg");
    ObjectNode whole = JobForm.withDefaults(lift);
    assertEquals(5, whole.at("/load/massTolerancePercent").intValue());
    assertEquals(0, whole.at("/load/frictionN").intValue());
    assertTrue(whole.at("/load/lightestMassKg").isNull());
    assertEquals(whole, JobForm.withDefaults(whole), "normalising twice changes nothing");
    lift.withObject("/load").retain("type");
    assertEquals(
        Map.of(
            "#/load/massKg", "missing",
            "#/load/travelMm", "missing",
            "#/load/directionDeg", "missing"),
        codes(lift));
  }

  @Test
  void refusesTheFieldsOfAnotherType() {
    ObjectNode lift = Jobs.tree(Jobs.LIFT);
    lift.withObject("/load").put("openingAngleDeg", 80).put("tiltDeg", 0);
    assertEquals(
        Map.of("#/load/openingAngleDeg", "unknown-field", "#/load/tiltDeg", "unknown-field"),
        codes(lift));
    ObjectNode profile = Jobs.tree(Jobs.PROFILE);
    profile.withObject("/load").put("massKg", 12);
    assertEquals(Map.of("#/load/massKg", "unknown-field"), codes(profile));
    ObjectNode lid = Jobs.lid();
    lid.withObject("/load").put("travelMm", 12);
    assertEquals(Map.of("#/load/travelMm", "unknown-field"), codes(lid));
  }

  @Test
  void boundsWhatALiftIsGiven() {
    ObjectNode lift = Jobs.tree(Jobs.LIFT);
    lift.withObject("/load")
        .put("massKg", 0)
        .put("travelMm", 5000.1)
        .put("directionDeg", "up")
        .put("frictionN", -1);
    assertEquals(
        Map.of(
            "#/load/massKg", "out-of-bounds",
            "#/load/travelMm", "out-of-bounds",
            "#/load/directionDeg", "not-a-number",
            "#/load/frictionN", "out-of-bounds"),
        codes(lift));
    ObjectNode heavier = Jobs.tree(Jobs.LIFT);
    heavier.withObject("/load").put("lightestMassKg", 30);
    assertEquals(Map.of("#/load/lightestMassKg", "out-of-order"), codes(heavier));
  }

  @Test
  void findsALiftsMountsThatCoincideOrPassThroughEachOther() {
    ObjectNode lift = Jobs.tree(Jobs.LIFT);
    lift.withObject("/mounts/movingMm").put("x", 40).put("y", 0);
    assertEquals(Map.of("#/mounts/movingMm", "mounts-coincide"), codes(lift));
    lift.withObject("/mounts/movingMm").put("y", -150);
    assertEquals(Map.of("#/mounts/movingMm", "mounts-pass-through"), codes(lift));
    lift.withObject("/mounts/movingMm").put("y", -300);
    assertEquals(Map.of(), codes(lift), "it ends before it reaches the other mount");
  }

  @Test
  void wantsMountsWhereASpringHangsOnThemAndRefusesThemElsewhere() {
    ObjectNode lift = Jobs.tree(Jobs.LIFT);
    lift.remove("mounts");
    assertEquals(Map.of("#/mounts", "missing"), codes(lift));
    assertEquals(Map.of("#/mounts", "missing"), codes(lift.putNull("mounts")));
    assertEquals(Map.of("#/mounts", "not-an-object"), codes(lift.put("mounts", 3)));
    ObjectNode profile = Jobs.tree(Jobs.PROFILE);
    profile.set("mounts", Jobs.lid().get("mounts"));
    assertEquals(Map.of("#/mounts", "no-mounts-here"), codes(profile));
    assertEquals(Map.of(), codes(profile.putNull("mounts")));
  }

  @Test
  void refusesTheSpringAsTheStopOfATable() {
    ObjectNode profile = Jobs.tree(Jobs.PROFILE);
    profile.withObject("/requirements").put("openStop", "spring-stop");
    assertEquals(Map.of("#/requirements/openStop", "no-spring-stop-here"), codes(profile));
  }

  @Test
  void wantsTwoToFiveHundredPointsOfRisingLength() {
    assertEquals(Map.of("#/load/points", "list-size"), codes(profile(1)));
    assertEquals(Map.of(), codes(profile(2)));
    assertEquals(Map.of(), codes(profile(500)));
    assertEquals(Map.of("#/load/points", "list-size"), codes(profile(501)));
    ObjectNode falling = profile(4);
    point(falling, 2).put("lengthMm", 301);
    Fault fault = JobForm.faults(falling).get(0);
    assertEquals("#/load/points/2/lengthMm", fault.where());
    assertEquals("301", fault.value().toString());
    assertEquals("> 301 mm", fault.bound());
    assertEquals("profile-not-rising", fault.code());
  }

  @Test
  void namesEveryPointAtFault() {
    ObjectNode profile = profile(5);
    point(profile, 0).put("lengthMm", -1);
    point(profile, 1).put("forceN", 20_001);
    point(profile, 2).remove("forceN");
    point(profile, 3).put("colour", "red");
    ((ArrayNode) profile.at("/load/points")).set(4, profile.numberNode(7));
    assertEquals(
        Map.of(
            "#/load/points/0/lengthMm", "out-of-bounds",
            "#/load/points/1/forceN", "out-of-bounds",
            "#/load/points/2/forceN", "missing",
            "#/load/points/3/colour", "unknown-field",
            "#/load/points/4", "not-an-object"),
        codes(profile));
  }

  private static ObjectNode profile(int points) {
    ObjectNode profile = Jobs.tree(Jobs.PROFILE);
    ArrayNode list = profile.withObject("/load").putArray("points");
    for (int i = 0; i < points; i++) {
      list.addObject().put("lengthMm", 300 + i).put("forceN", 200);
    }
    return profile;
  }

  private static ObjectNode point(ObjectNode profile, int i) {
    return (ObjectNode) profile.at("/load/points/" + i);
  }

  private static Map<String, String> codes(ObjectNode document) {
    return JobForm.faults(document).stream().collect(Collectors.toMap(Fault::where, Fault::code));
  }
}
