package org.staywright.catalog;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.staywright.form.part.FittingColumn;
import org.staywright.form.part.FittingRow;
import org.staywright.form.table.NumberColumn;
import org.staywright.part.Finish;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.PartNumber;
import org.staywright.unit.Unit;

/**
 * The invented end fittings and brackets. Balls, clevis pins and clevis lengths follow {@code
 * shared/end-fittings.csv}; lengths of ball sockets are from memory of DIN 71802; the M4 socket is
 * smaller than that standard goes and of our own making, as are eyelets, plates, masses and
 * ratings.
 */
final class FittingPlan {

  private static final int FIRST_SERIAL = 500_000;
  private static final double SOCKET_SWING_DEG = 18;
  private static final double EYE_SWING_DEG = 3;

  /** Eyelets and clevises carry more than the ball of the same thread. */
  private static final double EYE_RATING = 1.2;

  private static final int CLIP_PACK = 10;

  /** Threads whose ball another thread has too: one clip serves both. */
  private static final Set<String> BALL_OF_ANOTHER = Set.of("M4", "M14");

  private static final List<Joint> JOINTS =
      List.of(
          new Joint("M4", "M4", 8, 18, 4, 12, 16, 9, 800, 0.007),
          new Joint("M5", "M5", 8, 22, 5, 14, 20, 9, 1000, 0.012),
          new Joint("M6", "M5", 10, 25, 6, 16, 24, 11, 1500, 0.02),
          new Joint("M8", "M6", 13, 30, 8, 20, 32, 13, 3000, 0.04),
          new Joint("M10", "M8", 16, 35, 10, 25, 40, 16, 5000, 0.075),
          new Joint("M12", "M8", 19, 42, 12, 30, 48, 19, 9000, 0.13),
          new Joint("M14", "M10", 19, 45, 14, 36, 56, 20, 14_000, 0.18));

  /**
   * What belongs to one thread.
   *
   * @param thread of the spring's ends
   * @param screw that a plate is fixed with
   * @param ballMm ball of socket and stud
   * @param socketMm shoulder to ball centre
   * @param pinMm pin of eyelet and clevis
   * @param eyeletMm shoulder to eye centre; half as much again for the long one
   * @param clevisMm shoulder to pin centre
   * @param studMm face to ball centre
   * @param ratingN load that socket, stud and plate carry
   * @param massKg of the ball socket
   */
  private record Joint(
      String thread,
      String screw,
      double ballMm,
      double socketMm,
      double pinMm,
      double eyeletMm,
      double clevisMm,
      double studMm,
      double ratingN,
      double massKg) {

    String ball() {
      return "ball " + NumberColumn.text(ballMm) + " mm";
    }

    String pin() {
      return "pin " + NumberColumn.text(pinMm) + " mm";
    }
  }

  private final List<Fitting> made = new ArrayList<>();
  private int serial = FIRST_SERIAL;

  private FittingPlan() {}

  static List<Fitting> fittings() {
    FittingPlan plan = new FittingPlan();
    for (Finish finish : Finish.values()) {
      for (Joint joint : JOINTS) {
        plan.endFittings(joint, finish);
        plan.brackets(joint, finish);
      }
    }
    return List.copyOf(plan.made);
  }

  /** What a ball socket adds to a spring with this thread, m. */
  static double socketLength(String thread) {
    return JOINTS.stream()
        .filter(joint -> joint.thread.equals(thread))
        .mapToDouble(joint -> Unit.MILLIMETRE.si(joint.socketMm))
        .findFirst()
        .orElseThrow();
  }

  private void endFittings(Joint joint, Finish finish) {
    String thread = joint.thread;
    double rating = joint.ratingN;
    double eye = EYE_RATING * rating;
    double mass = joint.massKg;
    add(
        FittingType.BALL_SOCKET,
        finish,
        "Ball socket " + thread + ", " + joint.ball(),
        thread,
        numbers(joint.socketMm, rating, SOCKET_SWING_DEG, joint.ballMm, 0, mass));
    add(
        FittingType.EYELET,
        finish,
        "Eyelet " + thread + ", " + joint.pin(),
        thread,
        numbers(joint.eyeletMm, eye, EYE_SWING_DEG, 0, joint.pinMm, 0.7 * mass));
    add(
        FittingType.EYELET,
        finish,
        "Eyelet " + thread + ", " + joint.pin() + ", long",
        thread,
        numbers(1.5 * joint.eyeletMm, eye, EYE_SWING_DEG, 0, joint.pinMm, mass));
    add(
        FittingType.CLEVIS,
        finish,
        "Clevis " + thread + ", " + joint.pin(),
        thread,
        numbers(joint.clevisMm, eye, EYE_SWING_DEG, 0, joint.pinMm, 1.6 * mass));
  }

  private void brackets(Joint joint, Finish finish) {
    double rating = joint.ratingN;
    double mass = joint.massKg;
    add(
        FittingType.BALL_STUD,
        finish,
        "Ball stud " + joint.thread + ", " + joint.ball(),
        joint.thread,
        numbers(joint.studMm, rating, 0, joint.ballMm, 0, 0.6 * mass));
    add(
        FittingType.PLATE,
        finish,
        "Plate with stud, " + joint.ball() + ", for two screws " + joint.screw,
        joint.screw,
        numbers(joint.studMm + 3, rating, 0, joint.ballMm, 0, 2.5 * mass));
    add(
        FittingType.PLATE,
        finish,
        "Plate with fork, " + joint.pin() + ", for two screws " + joint.screw,
        joint.screw,
        numbers(2 * joint.pinMm + 4, EYE_RATING * rating, 0, 0, joint.pinMm, 3 * mass));
    if (!BALL_OF_ANOTHER.contains(joint.thread)) {
      add(
          FittingType.RETAINING_CLIP,
          finish,
          "Retaining clip, " + joint.ball(),
          null,
          numbers(0, 0, 0, joint.ballMm, 0, 0.03 * mass));
    }
  }

  private static Map<FittingColumn, Double> numbers(
      double length, double rating, double swing, double ball, double pin, double mass) {
    Map<FittingColumn, Double> numbers = new EnumMap<>(FittingColumn.class);
    numbers.put(FittingColumn.LENGTH_TO_CENTRE, length);
    numbers.put(FittingColumn.RATING, rating);
    numbers.put(FittingColumn.SWING, swing);
    numbers.put(FittingColumn.BALL_DIAMETER, ball);
    numbers.put(FittingColumn.PIN_DIAMETER, pin);
    numbers.put(
        FittingColumn.MASS, BigDecimal.valueOf(mass).round(new MathContext(2)).doubleValue());
    return numbers;
  }

  private void add(
      FittingType type,
      Finish finish,
      String description,
      String thread,
      Map<FittingColumn, Double> numbers) {
    String number = PartNumber.of(serial++);
    boolean stainless = finish == Finish.STAINLESS;
    boolean clip = type == FittingType.RETAINING_CLIP;
    double price = clip ? 0.35 : 0.9 + 22 * numbers.get(FittingColumn.MASS);
    made.add(
        new FittingRow(
                number,
                description + (stainless ? ", stainless" : ""),
                type,
                finish,
                thread,
                numbers,
                Invented.fitting(number, price, clip ? CLIP_PACK : 1, stainless))
            .fitting());
  }
}
