package org.staywright.wording;

import java.util.Optional;
import java.util.StringJoiner;
import org.staywright.part.Coded;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
import org.staywright.spring.Damper;
import org.staywright.spring.Kinds;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.Spring;
import org.staywright.unit.Unit;

/** Parts in words. */
public final class PartText {

  private final Wording wording;

  private PartText(Wording wording) {
    this.wording = wording;
  }

  public static PartText in(Wording wording) {
    return new PartText(wording);
  }

  /** The range's own description, or one sentence from the figures. */
  public String describe(Part part) {
    if (part.description() != null) {
      return part.description();
    }
    Spring spring = part.spring();
    String sentence =
        wording.text(
            "part.description",
            name("family", part.family()),
            millimetres(spring.rodDiameter()),
            millimetres(spring.tubeDiameter()),
            millimetres(spring.stroke()),
            wording.shortest(spring.force(), Unit.NEWTON, 1),
            name("finish", part.finish()),
            part.ends().rod(),
            part.ends().tube());
    return part.endZone() > 0 ? wording.text("part.description.end-damped", sentence) : sentence;
  }

  /** The range's own description, or a few words from the figures. */
  public String describe(Fitting fitting) {
    if (fitting.description() != null) {
      return fitting.description();
    }
    String type = name("fitting", fitting.type());
    String finish = name("finish", fitting.finish());
    return fitting.thread() == null
        ? wording.text("part.fitting.description.plain", type, finish)
        : wording.text("part.fitting.description", type, fitting.thread(), finish);
  }

  /** A part in a few words from its figures, in the reader's language whatever the range's is. */
  public String brief(Part part) {
    Spring spring = part.spring();
    StringJoiner all = new StringJoiner(", ");
    all.add(
        wording.text(
            "part.brief",
            name("family", part.family()),
            millimetres(spring.rodDiameter()),
            millimetres(spring.tubeDiameter()),
            millimetres(spring.stroke())));
    if (!(spring instanceof Damper)) {
      all.add(wording.measure(spring.force(), Unit.NEWTON, 1));
    }
    acting(part, all);
    all.add(name("finish", part.finish()));
    return all.toString();
  }

  /** What a supplier needs to know of a part: dimensions, force, ends, finish. */
  public String specify(Part part) {
    Spring spring = part.spring();
    StringJoiner all = new StringJoiner(", ");
    all.add(
        wording.text(
            "part.specification",
            name("family", part.family()),
            millimetres(spring.rodDiameter()),
            millimetres(spring.tubeDiameter()),
            millimetres(spring.stroke()),
            millimetres(spring.extendedLength()),
            millimetres(spring.compressedLength())));
    if (spring.force() > 0) {
      all.add(
          wording.text(
              "part.specification.force",
              wording.shortest(spring.force(), Unit.NEWTON, 1),
              wording.shortest(part.forceTolerance(), Unit.NEWTON, 1)));
    }
    acting(part, all);
    part.lock()
        .map(lock -> wording.measure(lock.lockForce(), Unit.NEWTON, 0))
        .ifPresent(holds -> all.add(wording.text("part.specification.lock", holds)));
    all.add(wording.text("part.specification.threads", part.ends().rod(), part.ends().tube()));
    all.add(name("finish", part.finish()));
    return all.toString();
  }

  /** What it does besides pushing or pulling. */
  private void acting(Part part, StringJoiner all) {
    part.spring().told(new Acting()).ifPresent(all::add);
    if (part.endZone() > 0) {
      all.add(wording.text("part.end-damped"));
    }
  }

  private final class Acting implements Kinds<Optional<String>> {

    @Override
    public Optional<String> plain() {
      return Optional.empty();
    }

    @Override
    public Optional<String> locking(LockingSpring locking) {
      String way = wording.text("part.locking." + locking.locking().code());
      return Optional.of(wording.text("part.locks", way));
    }

    @Override
    public Optional<String> damper(Damper damper) {
      double speed = damper.compressing().speed();
      return Optional.of(
          wording.text(
              "part.resists",
              wording.measure(damper.compressing().force(), Unit.NEWTON, 0),
              wording.measure(damper.extending().at(speed), Unit.NEWTON, 0),
              wording.measure(speed, Unit.MILLIMETRE_PER_SECOND, 0)));
    }
  }

  /** What a supplier needs to know of an end fitting or bracket. */
  public String specify(Fitting fitting) {
    StringJoiner all = new StringJoiner(", ");
    String type = name("fitting", fitting.type());
    all.add(fitting.thread() == null ? type : type + ' ' + fitting.thread());
    if (fitting.ballDiameter() > 0) {
      all.add(wording.text("part.specification.ball", millimetres(fitting.ballDiameter())));
    }
    if (fitting.pinDiameter() > 0) {
      all.add(wording.text("part.specification.pin", millimetres(fitting.pinDiameter())));
    }
    if (fitting.type().endsASpring()) {
      all.add(wording.text("part.specification.centre", millimetres(fitting.lengthToCentre())));
    }
    if (fitting.type() != FittingType.RETAINING_CLIP && fitting.rating() > 0) {
      all.add(
          wording.text(
              "part.specification.rating", wording.bare(fitting.rating(), Unit.NEWTON, 0)));
    }
    all.add(name("finish", fitting.finish()));
    // Its screws are told nowhere but in the range's own words.
    if (fitting.type() == FittingType.PLATE && fitting.description() != null) {
      all.add(wording.text("part.specification.own", fitting.description()));
    }
    return all.toString();
  }

  /** A value of a list in words: {@code part.finish.zinc}. */
  public String name(String list, Coded value) {
    return wording.text("part." + list + '.' + value.code());
  }

  private String millimetres(double metres) {
    return wording.shortest(metres, Unit.MILLIMETRE, 1);
  }
}
