package org.staywright.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.RawString;
import org.staywright.document.Drawing;
import org.staywright.document.SideView;
import org.staywright.document.Stand;
import org.staywright.document.Svg;
import org.staywright.fit.Figures;
import org.staywright.fit.Fit;
import org.staywright.fit.Job;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.Mounted;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.StraightLift;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * The side view, and what a pointer needs to know of it to move what is drawn.
 *
 * @param drawing of it
 * @param data places in mm, as JSON: where the view box lies, how the load moves, and its grips
 */
public record Scene(RawString drawing, String data) {

  private static final ObjectMapper JSON = new ObjectMapper();

  static Scene of(Job job, Fit fit, Stand stand, Wording wording) {
    Drawing drawing = SideView.of(job, fit, stand, wording);
    ObjectNode data = JSON.createObjectNode();
    data.put("left", drawing.box().left());
    data.put("top", drawing.box().top());
    data.put("scale", Svg.scale(drawing));
    ArrayNode grips = data.putArray("grips");
    double end =
        fit != null && fit.outcome() instanceof Figures figures
            ? figures.openingAngle()
            : job.mechanism().end();
    if (job.mechanism() instanceof HingedFlap flap) {
      data.put("sense", flap.sense());
      data.put("end", Unit.DEGREE.of(end));
      grip(grips, "mounts.frameMm", flap.mounts().frame(), false, "sideview.frame-mount", wording);
      grip(
          grips, "mounts.movingMm", flap.mounts().moving(), true, "sideview.moving-mount", wording);
      grip(grips, "load.centreOfMassMm", flap.centreOfMass(), true, "sideview.centre", wording);
      grip(grips, "load.handleMm", flap.handle(), true, "sideview.handle", wording);
    } else if (job.mechanism() instanceof StraightLift lift) {
      data.put("direction", lift.direction());
      data.put("end", Unit.MILLIMETRE.of(end));
      mounts(grips, lift, wording);
    }
    return new Scene(Pictures.of(drawing), data.toString());
  }

  private static void mounts(ArrayNode grips, Mounted mounted, Wording wording) {
    grip(grips, "mounts.frameMm", mounted.mounts().frame(), false, "sideview.frame-mount", wording);
    grip(grips, "mounts.movingMm", mounted.mounts().moving(), true, "sideview.load-mount", wording);
  }

  /**
   * @param moves whether it goes along with the load
   */
  private static void grip(
      ArrayNode grips, String field, Point at, boolean moves, String label, Wording wording) {
    grips
        .addObject()
        .put("field", field)
        .put("x", Unit.MILLIMETRE.of(at.x()))
        .put("y", Unit.MILLIMETRE.of(at.y()))
        .put("moves", moves)
        .put("label", wording.text(label));
  }
}
