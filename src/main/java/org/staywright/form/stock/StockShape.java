package org.staywright.form.stock;

import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;

import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;

/** What is asked of imports and revisions of the range, and of a backup. */
public final class StockShape {

  public static final Shape IMPORT =
      Shape.of(
          "stock-import",
          withDefault("dryRun", new Flag(), false),
          withDefault("mode", Choice.of("replace", "update"), "replace"),
          withDefault("friction", Choice.of("half", "difference"), "half"),
          optional("columns", Text.upTo(8000)),
          optional("name", Text.upTo(200)));

  /** Of a file that is here already. */
  public static final Shape AGAIN =
      Shape.of(
          "stock-import-again",
          IMPORT.fields().values().stream()
              .filter(field -> !field.name().equals("name"))
              .toArray(Field[]::new));

  public static final Shape CHANGES =
      Shape.of("stock-changes-query", required("since", new Whole(1, 1_000_000_000)));

  /** Of a backup. */
  public static final Shape RESTORE =
      Shape.of("restore-query", withDefault("dryRun", new Flag(), false));

  private StockShape() {}
}
