package org.staywright.document.view;

import org.staywright.fit.job.Beside;
import org.staywright.part.Family;
import org.staywright.wording.Wording;

/** What acts beside the springs, in words. */
public final class BesideText {

  private final Wording wording;

  public BesideText(Wording wording) {
    this.wording = wording;
  }

  /** What it is: a damper or a second spring. */
  String kind(Beside each) {
    return wording.text(
        "document.beside." + (each.part().family() == Family.DAMPER ? "damper" : "spring"));
  }

  /** "1 × 04Y-DNP (damper)". */
  public String counted(Beside each) {
    String count = wording.text("document.job-sheet.set", each.count(), each.part().number());
    return wording.text("document.job-sheet.set.beside", count, kind(each));
  }
}
