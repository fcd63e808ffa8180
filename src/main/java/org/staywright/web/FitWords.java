package org.staywright.web;

import io.quarkus.qute.RawString;
import java.util.List;
import org.staywright.document.OverlayChart;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.fit.SeatFigures;
import org.staywright.wording.Wording;

/** What a part does in a job, in words: of one kind at a hand, of another under a seat. */
sealed interface FitWords permits HandWords, SeatWords {

  /**
   * @param wording in the words of the job's mechanism
   */
  static FitWords of(Job job, Fit fit, Wording wording) {
    return fit.outcome() instanceof SeatFigures
        ? new SeatWords(job, fit, wording)
        : new HandWords(job, fit, wording);
  }

  /** What it does, in one sentence. */
  String sentence();

  /** The figures that it is ranked by, the foremost first. */
  List<Figure> cells();

  /** Its curve, small enough for a row. */
  RawString curve();

  /** Its charts and its side view. */
  List<Graph> graphs();

  /** The first of them. */
  default Graph chart() {
    return graphs().get(0);
  }

  /** All its figures, in the order of a reader's questions. */
  List<Figure> figures();

  /** What is felt and what it holds, for a comparison. */
  List<Trait> doing();

  /** How it goes in and how hard it is worked, for a comparison. */
  List<Trait> holding();

  /** Its curve among others. */
  OverlayChart.Line line(String letter);
}
