package org.staywright.web.api.request;

import static org.staywright.form.schema.Field.optional;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.JsonText;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Shape;

/** A job as it may be sent back: what a client gets but does not set is read over. */
public final class ChangedJob {

  private static final List<String> READ_ONLY = List.of("id", "created", "changed", "choice");

  public static final Shape SHAPE = shape();

  private ChangedJob() {}

  private static Shape shape() {
    Map<String, Field> fields = new LinkedHashMap<>(JobShape.JOB.fields());
    READ_ONLY.forEach(name -> fields.put(name, optional(name, new Anything())));
    return new Shape("changed-job", fields);
  }

  /** The body without what only we set. */
  public static JsonText read(JsonText body) {
    return body.tree() instanceof ObjectNode object
        ? new JsonText(object.deepCopy().without(READ_ONLY), body.repeated())
        : body;
  }
}
