package org.staywright.web.api.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Bound;

/** What a field may hold as a schema of the OpenAPI document. */
final class SchemaOf {

  private SchemaOf() {}

  /** Of a member: with its default, and null where it may be left out. */
  static Schema field(Field field) {
    Schema schema = kind(field.kind());
    JsonNode fallback = field.fallback();
    if (fallback != null && !fallback.isObject()) {
      schema.setDefaultValue(plain(fallback));
    }
    if (!field.required() && schema.getType() != null) {
      schema.addType(SchemaType.NULL);
      if (schema.getEnumeration() != null) {
        schema.addEnumeration(null);
      }
    }
    return schema;
  }

  static Schema kind(Kind kind) {
    Schema schema = OASFactory.createSchema();
    if (kind instanceof Shape shape) {
      return shape(shape);
    } else if (kind instanceof Kind.Variants variants) {
      List<Schema> shapes = variants.shapes().stream().map(SchemaOf::shape).toList();
      return shapes.size() == 1 ? shapes.get(0) : schema.oneOf(shapes);
    } else if (kind instanceof Kind.Amount amount) {
      bounded(schema.addType(SchemaType.NUMBER), amount.bound());
    } else if (kind instanceof Kind.Whole whole) {
      bounded(schema.addType(SchemaType.INTEGER), whole.bound());
    } else if (kind instanceof Kind.Text text) {
      schema.addType(SchemaType.STRING).maxLength(text.longest());
      schema.setPattern(text.pattern() == null ? null : "^(" + text.pattern() + ")$");
    } else if (kind instanceof Kind.Choice choice) {
      schema.addType(SchemaType.STRING).setEnumeration(new ArrayList<>(choice.words()));
    } else if (kind instanceof Kind.Flag) {
      schema.addType(SchemaType.BOOLEAN);
    } else if (kind instanceof Kind.Listing listing) {
      schema.addType(SchemaType.ARRAY).items(kind(listing.of()));
      schema.minItems(1).maxItems(listing.most()).uniqueItems(true);
    } else if (kind instanceof Kind.Many many) {
      schema.addType(SchemaType.ARRAY).items(kind(many.of()));
      schema.setMinItems(many.least() > 0 ? many.least() : null);
      schema.setMaxItems(many.most() < Integer.MAX_VALUE ? many.most() : null);
    }
    return schema;
  }

  /** The unit from the bound, and what more there is to say of a field. */
  private static Schema described(Shape shape, Field field) {
    Schema schema = field(field);
    String about = About.of(shape, field);
    if (about != null) {
      String unit = schema.getDescription() == null ? "" : schema.getDescription() + ". ";
      schema.setDescription(unit + about);
    }
    return schema;
  }

  private static Schema shape(Shape shape) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.OBJECT);
    schema.setAdditionalPropertiesSchema(OASFactory.createSchema().booleanSchema(false));
    for (Field field : shape.fields().values()) {
      if (!(field.kind() instanceof Kind.Later)) {
        schema.addProperty(field.name(), described(shape, field));
        if (field.required()) {
          schema.addRequired(field.name());
        }
      }
    }
    return schema;
  }

  private static void bounded(Schema schema, Bound bound) {
    if (Double.isFinite(bound.low())) {
      BigDecimal low = BigDecimal.valueOf(bound.low());
      schema.setMinimum(bound.lowOpen() ? null : low);
      schema.setExclusiveMinimum(bound.lowOpen() ? low : null);
    }
    if (Double.isFinite(bound.high())) {
      BigDecimal high = BigDecimal.valueOf(bound.high());
      schema.setMaximum(bound.highOpen() ? null : high);
      schema.setExclusiveMaximum(bound.highOpen() ? high : null);
    }
    schema.setDescription(bound.unit().isEmpty() ? null : bound.unit());
  }

  private static Object plain(JsonNode node) {
    if (node.isArray()) {
      List<Object> list = new ArrayList<>();
      node.forEach(each -> list.add(plain(each)));
      return list;
    }
    if (node.isNumber()) {
      return node.decimalValue();
    }
    return node.isBoolean() ? node.booleanValue() : node.textValue();
  }
}
