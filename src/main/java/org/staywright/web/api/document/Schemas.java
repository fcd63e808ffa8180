package org.staywright.web.api.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Bound;

/** The schemas of the OpenAPI document: objects are told once, by name, and referred to. */
final class Schemas {

  private static final String COMPONENT = "#/components/schemas/";

  private final Map<String, Shape> shapes = new HashMap<>();
  private final Map<String, Schema> told;

  /**
   * @param told by name, takes every object
   */
  Schemas(Map<String, Schema> told) {
    this.told = told;
  }

  static Schema named(String name) {
    return OASFactory.createSchema().ref(COMPONENT + name);
  }

  static Schema text() {
    return OASFactory.createSchema().addType(SchemaType.STRING);
  }

  /** The same, or null: which is none of some words, and the extension leaves it out of them. */
  static Schema orNull(Schema schema) {
    if (schema.getRef() != null || schema.getEnumeration() != null) {
      Schema nothing = OASFactory.createSchema().addType(SchemaType.NULL);
      return OASFactory.createSchema().anyOf(List.of(schema, nothing));
    }
    return schema.getType() == null ? schema : schema.addType(SchemaType.NULL);
  }

  /** Adds what is to be said of a field to its unit. */
  static Schema saying(Schema schema, String about) {
    if (about != null) {
      String unit = schema.getDescription() == null ? "" : schema.getDescription() + ". ";
      schema.setDescription(unit + about);
    }
    return schema;
  }

  /** Tells what records refer to by a name; a shape has it by itself. */
  void tell(String name, Kind kind) {
    Schema schema = of(kind);
    if (!(kind instanceof Shape)) {
      told.put(name, schema);
    }
  }

  /** Of a member: with its default, and null where it may be left out. */
  Schema of(Field field) {
    Schema schema = field.required() ? of(field.kind()) : orNull(of(field.kind()));
    JsonNode fallback = field.fallback();
    if (fallback != null && !fallback.isObject()) {
      schema.setDefaultValue(plain(fallback));
    }
    return schema;
  }

  Schema of(Kind kind) {
    Schema schema = OASFactory.createSchema();
    if (kind instanceof Shape shape) {
      return reference(shape);
    } else if (kind instanceof Kind.Variants variants) {
      List<Schema> shapes = variants.shapes().stream().map(this::reference).toList();
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
      schema.addType(SchemaType.ARRAY).items(of(listing.of()));
      schema.minItems(1).maxItems(listing.most()).uniqueItems(true);
    } else if (kind instanceof Kind.Many many) {
      schema.addType(SchemaType.ARRAY).items(of(many.of()));
      schema.setMinItems(many.least() > 0 ? many.least() : null);
      schema.setMaxItems(many.most() < Integer.MAX_VALUE ? many.most() : null);
    }
    return schema;
  }

  private Schema reference(Shape shape) {
    Shape known = shapes.putIfAbsent(shape.name(), shape);
    if (known == null) {
      told.put(shape.name(), object(shape));
    } else if (!known.equals(shape)) {
      throw new IllegalStateException("two shapes are called " + shape.name());
    }
    return named(shape.name());
  }

  private Schema object(Shape shape) {
    Schema schema = OASFactory.createSchema().addType(SchemaType.OBJECT);
    schema.setAdditionalPropertiesSchema(OASFactory.createSchema().booleanSchema(false));
    members(schema, shape.name(), shape);
    return schema;
  }

  /**
   * Adds the fields of a shape to a schema.
   *
   * @param object what the texts call it
   */
  void members(Schema schema, String object, Shape shape) {
    for (Field field : shape.fields().values()) {
      if (!(field.kind() instanceof Kind.Later)) {
        schema.addProperty(field.name(), saying(of(field), About.of(object, field.name())));
        if (field.required()) {
          schema.addRequired(field.name());
        }
      }
    }
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
