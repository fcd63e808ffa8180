package org.staywright.document;

import org.staywright.fit.Fit;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mechanism;
import org.staywright.wording.Wording;

/** The mechanism from the side, each kind in its own drawing. */
public final class SideView {

  private SideView() {}

  /** The mechanism alone. */
  public static Drawing of(Mechanism mechanism, Wording wording) {
    return of(mechanism, null, wording);
  }

  /** The mechanism with an assessed spring; without one where it is null. */
  public static Drawing of(Mechanism mechanism, Fit fit, Wording wording) {
    if (mechanism instanceof HingedFlap flap) {
      return FlapView.of(flap, fit, wording);
    }
    throw new IllegalArgumentException("no drawing of " + mechanism.getClass().getSimpleName());
  }
}
