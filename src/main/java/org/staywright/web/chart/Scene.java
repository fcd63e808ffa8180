package org.staywright.web.chart;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import org.staywright.document.draw.Drawing;
import org.staywright.document.draw.Svg;
import org.staywright.document.view.SideView;
import org.staywright.document.view.ViewPosition;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.mechanism.Mechanism;
import org.staywright.mechanism.Mounts;
import org.staywright.mechanism.Point;
import org.staywright.mechanism.Rigid;
import org.staywright.unit.Unit;
import org.staywright.wording.Wording;

/**
 * The side view, and what a pointer needs to know of it to move what is drawn.
 *
 * @param graph of it; for a table of forces a chart with its numbers
 * @param data places in mm, as JSON: where the view box lies, how the load moves, and its grips
 */
public record Scene(Graph graph, String data) {

  private static final ObjectMapper JSON = new ObjectMapper();

  public static Scene of(Job job, Fit fit, ViewPosition stand, Wording wording) {
    Drawing drawing = SideView.of(job, fit, stand, wording);
    ObjectNode data = data(drawing);
    ArrayNode grips = data.putArray("grips");
    double end = fit == null ? job.mechanism().end() : fit.outcome().end();
    job.mechanism().rigid().ifPresent(load -> moving(data, grips, load, end, wording));
    return new Scene(Graph.of(drawing, wording.text("bench.view"), wording), data.toString());
  }

  /** A point of a load that its form asks for. */
  private record Own(String field, Point at, String label) {}

  private static boolean turns(Mechanism mechanism) {
    return mechanism.movement() == Mechanism.Movement.TURNS;
  }

  /** Key of what the mount on the load is called. */
  private static String onTheLoad(Mechanism mechanism) {
    return turns(mechanism) ? "sideview.moving-mount" : "sideview.load-mount";
  }

  /** How a load goes along its travel, and what of it can be moved to elsewhere. */
  private static void moving(
      ObjectNode data, ArrayNode grips, Rigid load, double end, Wording wording) {
    load.as(
        flap -> data.put("sense", flap.sense()), lift -> data.put("direction", lift.direction()));
    data.put("end", (turns(load) ? Unit.DEGREE : Unit.MILLIMETRE).of(end));
    Mounts mounts = load.mounts();
    grip(grips, "mounts.frameMm", mounts.frame(), false, wording.text("sideview.frame-mount"));
    grip(grips, "mounts.movingMm", mounts.moving(), true, wording.text(onTheLoad(load)));
    List<Own> own =
        load.as(
            flap ->
                List.of(
                    new Own("centreOfMassMm", flap.centreOfMass(), "sideview.centre"),
                    new Own("handleMm", flap.handle(), "sideview.handle")),
            lift -> List.of());
    own.forEach(each -> grip(grips, "load." + each.field, each.at, true, wording.text(each.label)));
  }

  /**
   * Zones for mounts, with a grip at two corners of each and one that shifts it whole.
   *
   * @param found mounts there
   */
  public static Scene of(Job job, Zones zones, List<Mounts> found, Wording wording) {
    Drawing drawing = SideView.of(job, zones, found, wording);
    ObjectNode data = data(drawing);
    ArrayNode grips = data.putArray("grips");
    String moving = onTheLoad(job.mechanism());
    zone(grips, "zones.frameMm", 0, zones.frame(), wording.text("sideview.frame-mount"), wording);
    zone(grips, "zones.movingMm", 0, zones.moving(), wording.text(moving), wording);
    for (int i = 0; i < zones.keepOut().size(); i++) {
      String name = wording.text("sideview.keep-out", wording.number(i + 1, 0));
      zone(grips, "zones.keepOutMm", i, zones.keepOut().get(i), name, wording);
    }
    return new Scene(Graph.of(drawing, "", wording), data.toString());
  }

  /**
   * @param row of the zone among those of its field
   */
  private static void zone(
      ArrayNode grips, String field, int row, Zone zone, String name, Wording wording) {
    Point low = new Point(zone.left(), zone.bottom());
    Point high = new Point(zone.right(), zone.top());
    grip(grips, field, low, false, wording.text("sideview.zone.low", name))
        .put("row", row)
        .put("part", "low");
    grip(grips, field, high, false, wording.text("sideview.zone.high", name))
        .put("row", row)
        .put("part", "high");
    grip(grips, field, zone.centre(), false, wording.text("sideview.zone.whole", name))
        .put("row", row)
        .put("part", "whole");
  }

  /** Where the view box lies. */
  private static ObjectNode data(Drawing drawing) {
    return JSON.createObjectNode()
        .put("left", drawing.box().left())
        .put("top", drawing.box().top())
        .put("scale", Svg.scale(drawing));
  }

  /**
   * @param moves whether it goes along with the load
   */
  private static ObjectNode grip(
      ArrayNode grips, String field, Point at, boolean moves, String label) {
    return grips
        .addObject()
        .put("field", field)
        .put("x", Unit.MILLIMETRE.of(at.x()))
        .put("y", Unit.MILLIMETRE.of(at.y()))
        .put("moves", moves)
        .put("label", label);
  }

  @CheckedTemplate(basePath = "chart")
  public static final class Templates {

    private Templates() {}

    public static native TemplateInstance scene(Scene scene);
  }
}
