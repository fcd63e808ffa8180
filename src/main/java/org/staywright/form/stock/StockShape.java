package org.staywright.form.stock;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;
import static org.staywright.form.schema.Field.withDefault;

import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind.Anything;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Kind.Text;
import org.staywright.form.schema.Kind.Whole;
import org.staywright.form.schema.Shape;

/** Imports and revisions of the range: what is asked and what is answered. */
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

  private static final Shape FAULT =
      Shape.of(
          "row-fault",
          required("row", NUMBER),
          required("column", TEXT),
          optional("value", TEXT),
          required("expected", TEXT),
          required("code", TEXT),
          required("detail", TEXT));

  private static final Shape COLUMN =
      Shape.of(
          "file-column",
          required("header", TEXT),
          optional("column", TEXT),
          optional("unit", TEXT),
          required("unknown", new Flag()));

  private static final Shape UNDERSTOOD =
      Shape.of(
          "understood-row",
          required("row", NUMBER),
          required("values", new Anything()),
          required("derived", new Many(TEXT)));

  public static final Shape IMPORTED =
      Shape.of(
          "imported",
          required("id", TEXT),
          optional("revision", NUMBER),
          required("rows", NUMBER),
          required("accepted", NUMBER),
          required("added", NUMBER),
          required("changed", NUMBER),
          required("unchanged", NUMBER),
          required("gone", NUMBER),
          required("faultCount", NUMBER),
          required("faults", new Many(FAULT)),
          optional("faultsFile", TEXT),
          required("derived", new Anything()),
          required("columns", new Many(COLUMN)),
          required("preview", new Many(UNDERSTOOD)));

  public static final Shape REVISIONS =
      Shape.of(
          "revisions",
          required(
              "items",
              new Many(
                  Shape.of(
                      "revision",
                      required("revision", NUMBER),
                      required("created", TEXT),
                      required("origin", TEXT)))));

  private static final Shape LISTED =
      Shape.of("listed", required("count", NUMBER), required("first", new Many(new Anything())));

  public static final Shape DIFFERENCE =
      Shape.of(
          "stock-changes",
          required("from", NUMBER),
          required("to", NUMBER),
          required("added", LISTED),
          required("changed", LISTED),
          required("gone", LISTED));

  public static final Shape RESTORED = Shape.of("restored", required("revision", NUMBER));

  private StockShape() {}
}
