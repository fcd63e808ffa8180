package org.staywright.wording;

import org.staywright.fit.job.Corner;

/** How springs and load turn out, in words. */
public final class CornerText {

  private CornerText() {}

  /** "cold and aged, heavy load". */
  public static String of(Corner corner, Wording wording) {
    return wording.text(
        "corner.both",
        wording.text("corner.spring." + corner.spring().code()),
        wording.text("corner.load." + corner.load().code()));
  }
}
