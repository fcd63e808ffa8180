package org.staywright.form.stock;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;

import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Shape;

/** A backup that is to be restored: what is asked and what is answered. */
public final class BackupShape {

  public static final Shape QUERY =
      Shape.of("restore-query", withDefault("dryRun", new Flag(), false));

  private static final Shape ROWS =
      Shape.of(
          "backup-rows",
          required("stock_revision", NUMBER),
          required("part", NUMBER),
          required("fitting", NUMBER),
          required("job", NUMBER),
          required("sample_jobs", NUMBER),
          required("batch", NUMBER),
          required("batch_job", NUMBER));

  public static final Shape RESTORED =
      Shape.of(
          "backup-contents",
          required("restored", new Flag()),
          required("created", TEXT),
          required("schema", TEXT),
          required("rows", ROWS));

  private BackupShape() {}
}
