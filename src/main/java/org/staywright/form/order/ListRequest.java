package org.staywright.form.order;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Listing;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** The jobs that are to share one parts list. */
public final class ListRequest {

  /** So many jobs go on one list. */
  private static final int MOST = 100;

  public static final Shape SHAPE =
      Shape.of(
          "parts-list-request",
          Field.required("jobs", new Listing(new Whole(1, Integer.MAX_VALUE), MOST)));

  private ListRequest() {}

  /** Numbers of jobs; a refusal names every fault of the body. */
  public static List<Long> read(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = SHAPE.read(body.tree(), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    List<Long> jobs = new ArrayList<>();
    tree.get("jobs").forEach(number -> jobs.add(number.longValue()));
    return jobs;
  }
}
