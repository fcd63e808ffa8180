package org.staywright.form.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.util.Locale;
import org.staywright.part.Coded;
import org.staywright.unit.Bound;

/**
 * How the records that are answered become JSON: numbers as {@link JsonNumber} rounds them, words
 * by their codes. A component that is null is written as null; one that is to be left out instead
 * says so by {@code @JsonInclude}.
 */
public final class AnswerJson extends SimpleModule {

  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .addModule(new AnswerJson())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();

  public AnswerJson() {
    super("answers");
    addSerializer(double.class, new Number());
    addSerializer(Double.class, new Number());
    addSerializer(double[].class, new Numbers());
    addSerializer(Enum.class, new Word());
    addSerializer(Bound.class, new Symbols());
  }

  /** An answer for who is served otherwise than by HTTP. */
  public static JsonNode tree(Object answer) {
    return MAPPER.valueToTree(answer);
  }

  /** How a word is written. */
  public static String code(Enum<?> word) {
    return word instanceof Coded coded ? coded.code() : word.name().toLowerCase(Locale.ROOT);
  }

  private static final class Number extends JsonSerializer<Double> {

    @Override
    public void serialize(Double value, JsonGenerator json, SerializerProvider all)
        throws IOException {
      JsonNumber.write(json, value);
    }
  }

  private static final class Numbers extends JsonSerializer<double[]> {

    @Override
    public void serialize(double[] values, JsonGenerator json, SerializerProvider all)
        throws IOException {
      json.writeStartArray();
      for (double value : values) {
        JsonNumber.write(json, value);
      }
      json.writeEndArray();
    }
  }

  private static final class Symbols extends JsonSerializer<Bound> {

    @Override
    public void serialize(Bound bound, JsonGenerator json, SerializerProvider all)
        throws IOException {
      json.writeString(bound.text());
    }
  }

  @SuppressWarnings("rawtypes") // as Jackson asks for it
  private static final class Word extends JsonSerializer<Enum> {

    @Override
    public void serialize(Enum word, JsonGenerator json, SerializerProvider all)
        throws IOException {
      json.writeString(code(word));
    }
  }
}
