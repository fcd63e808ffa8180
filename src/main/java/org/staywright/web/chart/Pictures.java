package org.staywright.web.chart;

import io.quarkus.qute.RawString;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Svg;
import org.staywright.document.view.MeasuringView;
import org.staywright.document.view.SpringOutline;
import org.staywright.document.view.SurveyView;
import org.staywright.part.Part;
import org.staywright.wording.Wording;

/** Drawings as the pages take them in: SVG that needs no escaping, as its writer escapes. */
public final class Pictures {

  private Pictures() {}

  /** Null for a question that needs no picture. */
  public static RawString whereToMeasure(String question, Wording wording) {
    return switch (question) {
      case "thickness", "length" -> of(MeasuringView.spring(wording));
      case "place" -> of(MeasuringView.places(wording));
      case "prop" -> of(SurveyView.propped(wording));
      case "mounts" -> of(SurveyView.mounts(wording));
      case "slopes" -> of(SurveyView.slopes(wording));
      case "flap", "hook" -> of(SurveyView.hooked(wording));
      default -> null;
    };
  }

  public static RawString outline(Part part, Wording wording) {
    return of(SpringOutline.of(part, wording));
  }

  public static RawString of(Drawing drawing) {
    return new RawString(Svg.of(drawing));
  }
}
