package org.staywright.form.batch;

import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Shape;

/** What is asked beside a file of jobs. */
public final class BatchRequest {

  public static final Shape QUERY = Shape.of("batch-query", Field.optional("name", Text.upTo(200)));

  private BatchRequest() {}
}
