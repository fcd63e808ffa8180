package org.staywright.wording;

import java.util.StringJoiner;
import org.staywright.part.Coded;
import org.staywright.part.Fitting;
import org.staywright.part.FittingType;
import org.staywright.part.Part;
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

  /** What a supplier needs to know of a part: dimensions, force, ends, finish. */
  public String specify(Part part) {
    Spring spring = part.spring();
    String sentence =
        wording.text(
            "part.specification",
            name("family", part.family()),
            millimetres(spring.rodDiameter()),
            millimetres(spring.tubeDiameter()),
            millimetres(spring.stroke()),
            millimetres(spring.extendedLength()),
            millimetres(spring.compressedLength()),
            wording.shortest(spring.force(), Unit.NEWTON, 1),
            wording.shortest(part.forceTolerance(), Unit.NEWTON, 1),
            part.ends().rod(),
            part.ends().tube(),
            name("finish", part.finish()));
    return part.endZone() > 0 ? wording.text("part.description.end-damped", sentence) : sentence;
  }

  /** What a supplier needs to know of an end fitting or bracket. */
  public String specify(Fitting fitting) {
    StringJoiner all = new StringJoiner(", ");
    all.add(describe(fitting));
    if (fitting.type().endsASpring()) {
      all.add(wording.text("part.specification.centre", millimetres(fitting.lengthToCentre())));
    }
    if (fitting.type() != FittingType.RETAINING_CLIP && fitting.rating() > 0) {
      all.add(
          wording.text(
              "part.specification.rating", wording.bare(fitting.rating(), Unit.NEWTON, 0)));
    }
    if (fitting.description() != null) {
      all.add(name("finish", fitting.finish()));
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
