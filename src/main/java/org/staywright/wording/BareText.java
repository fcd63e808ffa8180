package org.staywright.wording;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.HALF_UP;
import static org.staywright.unit.Unit.JOULE;
import static org.staywright.unit.Unit.NEWTON;

import org.staywright.fit.job.Bare;
import org.staywright.fit.job.Extreme;
import org.staywright.unit.Unit;

/** The load without a spring, in a sentence. */
public final class BareText {

  private final Bare bare;
  private final Unit way;
  private final Wording wording;

  private BareText(Bare bare, Unit way, Wording wording) {
    this.bare = bare;
    this.way = way;
    this.wording = wording;
  }

  /**
   * @param way that places on the way are told in
   * @param wording in the words of the job's mechanism
   */
  public static BareText of(Bare bare, Unit way, Wording wording) {
    return new BareText(bare, way, wording);
  }

  /** What the hand has to do without a spring, and what becomes of it let go. */
  public String sentence() {
    if (!bare.springNeeded()) {
      return wording.text("fit.bare.enough", hand(), joules());
    }
    if (bare.content()) {
      return wording.text("fit.bare.drops", hand(), joules());
    }
    return wording.text(bare.drops() ? "fit.bare.falls" : "fit.bare", hand(), joules());
  }

  /** Whether a damper alone would do. */
  public boolean damperDoes() {
    return bare.content() && bare.drops();
  }

  /** The greater of both ways. */
  private String hand() {
    Extreme open = bare.hand().openWorst();
    Extreme close = bare.hand().closeWorst();
    boolean opening = open.value() >= close.value();
    Extreme most = opening ? open : close;
    String newtons = wording.quantity(Math.max(0, most.value()), NEWTON, 0, CEILING);
    return wording.text(
        "fit.bare.at",
        wording.text(opening ? "fit.says.open.most" : "fit.says.close.most", newtons),
        wording.quantity(most.travel(), way, 0, HALF_UP),
        wording.text("corner.load." + most.corner().load().code()));
  }

  private String joules() {
    return wording.quantity(bare.drop(), JOULE, 0, CEILING);
  }
}
