package org.staywright.document.view;

import java.util.stream.IntStream;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Sketch;
import org.staywright.motion.Motion;
import org.staywright.wording.Wording;

/** Moments of a motion that a drawing shows at once: how it goes can be seen standing still. */
final class Stills {

  private static final int PARTS = 5;

  private Stills() {}

  /** Samples at even times, the start left out. */
  static int[] of(Motion motion) {
    return motion.moved()
        ? IntStream.rangeClosed(1, PARTS).map(i -> motion.last() * i / PARTS).toArray()
        : new int[0];
  }

  static String time(Motion motion, int sample, Wording wording) {
    return wording.number(motion.time()[sample], 2) + "\u00a0s";
  }

  static Drawing drawing(Sketch sketch, Motion motion, Wording wording) {
    return sketch.drawing(
        wording.text("document.moving-view"),
        wording.text("document.moving-view.about", wording.number(motion.endTime(), 2)),
        sketch.em());
  }
}
