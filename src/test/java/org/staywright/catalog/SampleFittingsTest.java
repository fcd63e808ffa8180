package org.staywright.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.unit.Unit;

/** The invented fittings against published dimensions and against the springs they carry. */
class SampleFittingsTest {

  private static final List<Part> PARTS =
      CatalogGenerator.SHEETS.stream().flatMap(sheet -> sheet.plan().get().stream()).toList();
  private static final List<Fitting> FITTINGS = FittingPlan.fittings();

  @Test
  void everySpringFindsEveryKindOfEndInItsFinish() {
    for (Part part : PARTS) {
      for (FittingType type : FittingType.values()) {
        if (type.endsASpring()) {
          assertTrue(
              FITTINGS.stream()
                  .anyMatch(
                      fitting ->
                          fitting.type() == type
                              && fitting.finish() == part.finish()
                              && part.ends().rod().equals(fitting.thread())),
              part.description() + " finds no " + type);
        }
      }
    }
  }

  @Test
  void carryThePeakLoadOfEverySpringWithTheirThread() {
    Map<String, Double> peaks = new HashMap<>();
    for (Part part : PARTS) {
      String thread = part.ends().rod();
      double peak = new RowFigures(part, FittingPlan.socketLength(thread)).peakLoad();
      peaks.merge(thread, peak, Math::max);
    }
    for (Fitting fitting : FITTINGS) {
      if (fitting.type().endsASpring()) {
        double peak = peaks.getOrDefault(fitting.thread(), 0.0);
        assertTrue(fitting.rating() >= peak, fitting.description() + " under " + peak + " N");
      }
    }
  }

  /** Proof loads of class 4.8, the softest listed: ISO 898-1 (shared/threads.csv). */
  @Test
  void ratingsStayBelowTheProofLoadOfTheThread() {
    Map<String, Double> proof = new HashMap<>();
    SharedTable.rows("threads.csv")
        .forEach(row -> proof.put(row.get("thread"), Double.valueOf(row.get("Fp_4.8_N"))));
    for (Fitting fitting : FITTINGS) {
      if (fitting.type().endsASpring()) {
        assertTrue(fitting.rating() < proof.get(fitting.thread()), fitting.description());
      }
    }
  }

  @Test
  void noThreadIsLargerThanTheRodItIsCutOn() {
    for (Part part : PARTS) {
      double thread = Double.parseDouble(part.ends().rod().substring(1));
      assertTrue(thread <= Unit.MILLIMETRE.of(part.spring().rodDiameter()) + 1e-9);
    }
  }

  /** DIN 71802 and 71803 (shared/end-fittings.csv); our M4 and M14 are beyond that table. */
  @Test
  void ballsFollowTheStandard() {
    int checked = 0;
    for (Map<String, String> row : SharedTable.rows("end-fittings.csv")) {
      if (row.get("dimension").equals("ball diameter mm")) {
        for (Fitting fitting : ends(row.get("size"), FittingType.BALL_SOCKET)) {
          double ball = Unit.MILLIMETRE.of(fitting.ballDiameter());
          assertEquals(Double.parseDouble(row.get("value")), ball, 1e-9, fitting.description());
          checked++;
        }
      }
    }
    assertEquals(5 * Finish.values().length, checked);
  }

  /** DIN 71752: pins as published, lengths from memory (shared/end-fittings.csv). */
  @Test
  void clevisesFollowTheStandard() {
    int checked = 0;
    for (Map<String, String> row : SharedTable.rows("end-fittings.csv")) {
      String[] sizes = row.get("value").split(" x ");
      for (Fitting fitting : ends(row.get("size"), FittingType.CLEVIS)) {
        double pin = Unit.MILLIMETRE.of(fitting.pinDiameter());
        double length = Unit.MILLIMETRE.of(fitting.lengthToCentre());
        if (row.get("standard").equals("DIN 71752 clevis")) {
          assertEquals(Double.parseDouble(sizes[0]), pin, 1e-9, fitting.description());
          checked++;
        } else if (row.get("standard").equals("DIN 71752 / ISO 8140 clevis")) {
          assertEquals(Double.parseDouble(sizes[1]), length, 1e-9, fitting.description());
          checked++;
        }
      }
    }
    assertEquals(2 * 7 * Finish.values().length, checked);
  }

  @Test
  void everyBallSocketFindsItsStudAndItsClip() {
    Set<FittingType> partners = EnumSet.of(FittingType.BALL_STUD, FittingType.RETAINING_CLIP);
    for (Fitting socket : FITTINGS) {
      for (FittingType partner : partners) {
        assertTrue(
            socket.type() != FittingType.BALL_SOCKET
                || FITTINGS.stream()
                    .anyMatch(
                        other ->
                            other.type() == partner
                                && other.finish() == socket.finish()
                                && other.ballDiameter() == socket.ballDiameter()),
            socket.description() + " finds no " + partner);
      }
    }
  }

  private static List<Fitting> ends(String size, FittingType type) {
    return FITTINGS.stream()
        .filter(fitting -> fitting.type() == type && size.equals("thread " + fitting.thread()))
        .toList();
  }
}
