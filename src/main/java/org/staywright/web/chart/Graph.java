package org.staywright.web.chart;

import io.quarkus.qute.RawString;
import org.staywright.document.draw.Drawing;
import org.staywright.wording.Wording;

/**
 * A drawing on a page.
 *
 * @param drawing of it
 * @param caption how to read it
 * @param numbers of a chart, null for what is none
 */
public record Graph(RawString drawing, String caption, Numbers numbers) {

  public static Graph of(Drawing drawing, String caption, Wording wording) {
    return new Graph(
        Pictures.of(drawing),
        caption,
        drawing.readings() == null ? null : Numbers.of(drawing.readings(), wording));
  }
}
