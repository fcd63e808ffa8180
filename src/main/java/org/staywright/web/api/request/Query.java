package org.staywright.web.api.request;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Fault;
import org.staywright.unit.Language;
import org.staywright.unit.Units;

/** The parameters of an address, read by a shape like any other input. */
public final class Query {

  private static final Shape NOTHING = Shape.of("nothing");

  /** How a document is to read. */
  private static final Shape DOCUMENT =
      Shape.of(
          "document",
          Field.optional("lang", new Kind.Choice(Language.tags(), List.of())),
          Field.optional(
              "units",
              Kind.Choice.of(Stream.of(Units.values()).map(Units::code).toArray(String[]::new))));

  private Query() {}

  /** The parameters with their defaults. */
  public static JsonNode read(Shape shape, UriInfo uri) {
    List<Fault> faults = new ArrayList<>();
    JsonNode query = shape.read(FlatForm.tree(shape, uri.getQueryParameters()), "", faults);
    if (!faults.isEmpty()) {
      throw new BadQuery(faults.stream().map(Query::named).toList());
    }
    return query;
  }

  /** Refuses every parameter. */
  public static void none(UriInfo uri) {
    read(NOTHING, uri);
  }

  /** Refuses every parameter but those of a document. */
  public static void document(UriInfo uri) {
    read(DOCUMENT, uri);
  }

  private static Fault named(Fault fault) {
    String code = fault.code().equals("unknown-field") ? "unknown-parameter" : fault.code();
    return new Fault(fault.where().substring(1), fault.value(), fault.bound(), code);
  }
}
