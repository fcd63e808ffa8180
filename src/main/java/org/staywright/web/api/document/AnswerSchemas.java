package org.staywright.web.api.document;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.lang.annotation.Annotation;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.form.schema.AnswerJson;
import org.staywright.web.api.request.Problem;

/**
 * What the extension found of the records that are answered, made as strict as they are: no further
 * member, every one there that is not marked {@code @Nullable}, words by their codes.
 */
final class AnswerSchemas {

  /** Marks what a table describes; the extension refers to that. */
  private static final Class<? extends Annotation> REFERS =
      org.eclipse.microprofile.openapi.annotations.media.Schema.class;

  /** Records and words by the names that the extension gives them. */
  private final Map<String, Class<?>> types = new TreeMap<>();

  private final Schemas tables;

  /**
   * @param tables takes what they describe
   */
  AnswerSchemas(List<Method> resources, Schemas tables) {
    this.tables = tables;
    collect(Problem.class);
    for (Method resource : resources) {
      collect(resource.getGenericReturnType());
      Stream.of(resource.getAnnotationsByType(APIResponseSchema.class))
          .forEach(answer -> collect(answer.value()));
    }
  }

  /** Those of the schemas that are of ours. */
  void tighten(Map<String, Schema> schemas) {
    types.forEach(
        (name, type) -> {
          if (schemas.containsKey(name)) {
            tighten(schemas.get(name), name, type);
          }
        });
  }

  private void tighten(Schema schema, String name, Class<?> type) {
    if (type.isEnum()) {
      schema.setEnumeration(
          Stream.of(type.getEnumConstants())
              .map(word -> (Object) AnswerJson.code((Enum<?>) word))
              .collect(Collectors.toList()));
      return;
    }
    Map<String, Schema> found = new HashMap<>(schema.getProperties());
    schema.setProperties(null);
    schema.setAdditionalPropertiesSchema(OASFactory.createSchema().booleanSchema(false));
    members(schema, found, object(type.getSimpleName()), type, false);
    if (!found.isEmpty()) {
      throw new IllegalStateException(name + " has more than its components: " + found.keySet());
    }
  }

  /** In their order; those of a record that may be missing as a whole may each be missing. */
  private void members(
      Schema schema, Map<String, Schema> found, String object, Class<?> type, boolean missing) {
    for (RecordComponent each : type.getRecordComponents()) {
      boolean optional = missing || each.getAnnotatedType().isAnnotationPresent(Nullable.class);
      if (each.getAccessor().isAnnotationPresent(JsonUnwrapped.class)) {
        members(schema, found, object, each.getType(), optional);
        continue;
      }
      if (each.getAccessor().isAnnotationPresent(JsonAnyGetter.class)) {
        tables.members(schema, object, Answered.MEMBERS.get(type));
        continue;
      }
      JsonProperty called = each.getAccessor().getAnnotation(JsonProperty.class);
      String name = called == null ? each.getName() : called.value();
      Schema member = Objects.requireNonNull(found.remove(name), name);
      // The extension invents a moment for each.
      member.setExamples(null);
      schema.addProperty(
          name, Schemas.saying(optional ? Schemas.orNull(member) : member, About.of(object, name)));
      if (!optional) {
        schema.addRequired(name);
      }
    }
  }

  /** What the texts call it: {@code HandCurveAnswer} is a hand-curve. */
  static String object(String name) {
    return name.replaceFirst("Answer$", "")
        .replaceAll("(?<=.)(?=[A-Z])", "-")
        .toLowerCase(Locale.ROOT);
  }

  private void collect(Type type) {
    if (type instanceof ParameterizedType generic) {
      List.of(generic.getActualTypeArguments()).forEach(this::collect);
      Class<?> raw = (Class<?>) generic.getRawType();
      String arguments =
          Stream.of(generic.getActualTypeArguments())
              .map(each -> each instanceof Class<?> plain ? plain.getSimpleName() : "")
              .collect(Collectors.joining());
      add(raw.getSimpleName() + arguments, raw);
    } else if (type instanceof GenericArrayType array) {
      collect(array.getGenericComponentType());
    } else if (type instanceof Class<?> plain) {
      add(plain.getSimpleName(), plain);
    }
  }

  private void add(String name, Class<?> type) {
    if (!type.isRecord() && !type.isEnum()) {
      return;
    }
    Class<?> known = types.put(name, type);
    if (known == null && type.isRecord()) {
      Stream.of(type.getRecordComponents())
          .filter(each -> !each.getAccessor().isAnnotationPresent(REFERS))
          .map(RecordComponent::getGenericType)
          .forEach(this::collect);
    } else if (known != null && known != type) {
      throw new IllegalStateException(
          "two answers are called " + name + ": " + known + ", " + type);
    }
  }
}
