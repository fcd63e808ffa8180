package org.staywright.form.mounts;

import static org.staywright.form.schema.Field.required;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.clear.Contradictions;
import org.staywright.fit.job.Job;
import org.staywright.fit.mounts.Zone;
import org.staywright.fit.mounts.Zones;
import org.staywright.form.job.JobForm;
import org.staywright.form.job.JobShape;
import org.staywright.form.job.JobTree;
import org.staywright.form.job.LoadForms;
import org.staywright.form.job.ZonesShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.JsonNumber;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Point;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * A job whose mounts are to be found.
 *
 * @param job hung in the middle of the zones for now
 * @param zones where its mounts may sit
 * @param document with every default filled in, the mounts in the middle of the zones
 */
public record MountsRequest(Job job, Zones zones, ObjectNode document) {

  /** A job with zones in place of mounts; mounts are read over. */
  public static final Shape SHAPE = shape(JobShape.JOB);

  /** The same fields, the zones required. */
  public static Shape shape(Shape job) {
    Map<String, Field> fields = new LinkedHashMap<>(job.fields());
    fields.put("zones", required("zones", ZonesShape.ZONES));
    return new Shape("mounts-job", fields);
  }

  /** A refusal names every fault of the body. */
  public static MountsRequest read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (tree != null) {
      String type = tree.at("/load/type").textValue();
      if (LoadForms.of(type).map(load -> !load.mounted()).orElse(false)) {
        faults.add(new Fault("#/load/type", type, "", "no-mounts-to-find"));
      } else {
        JobTree job = new JobTree(tree);
        if (job.size("/beside") > 0) {
          String first = "/beside/0/partNumber";
          faults.add(job.fault(first, "", "nothing-beside-in-zones").at("#" + first));
        }
        boolean zoned = tree.hasNonNull("zones");
        if (zoned && ZonesShape.faults(job).isEmpty() && complete(tree.get("zones"))) {
          hang((ObjectNode) tree, ZonesShape.read(job));
        }
        // Where the mounts hang for now says nothing about the zones.
        JobForm.crossFaults(tree, "#").stream()
            .filter(fault -> !fault.where().startsWith("#/mounts"))
            .forEach(faults::add);
      }
    }
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    JobTree sound = new JobTree(tree);
    Job job = JobForm.unchecked(tree);
    faults.addAll(JobForm.contradictions(sound, Contradictions.wherever(job)));
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return new MountsRequest(job, ZonesShape.read(sound), (ObjectNode) tree);
  }

  private static boolean complete(JsonNode zones) {
    return List.of("frameMm", "movingMm").stream()
        .allMatch(
            name ->
                zones.at("/" + name + "/x").size() == 2 && zones.at("/" + name + "/y").size() == 2);
  }

  private static void hang(ObjectNode tree, Zones zones) {
    ObjectNode mounts = tree.putObject("mounts");
    put(mounts.putObject("frameMm"), zones.frame());
    put(mounts.putObject("movingMm"), zones.moving());
    mounts.set("rodEndAt", tree.at("/zones/rodEndAt"));
    mounts.set("lateralOffsetMm", tree.at("/zones/lateralOffsetMm"));
  }

  private static void put(ObjectNode point, Zone zone) {
    Point centre = zone.centre();
    point.set("x", JsonNumber.of(centre.x(), Unit.MILLIMETRE));
    point.set("y", JsonNumber.of(centre.y(), Unit.MILLIMETRE));
  }
}
