package org.staywright.form.schema;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
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
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  public AnswerJson() {
    super("answers");
    addSerializer(double.class, new Written<Double>(JsonNumber::write));
    addSerializer(Double.class, new Written<Double>(JsonNumber::write));
    addSerializer(double[].class, new Written<>(AnswerJson::numbers));
    addSerializer(Enum.class, new Written<>((json, word) -> json.writeString(code(word))));
    addSerializer(Bound.class, new Written<>((json, bound) -> json.writeString(bound.text())));
  }

  /** An answer for who is served otherwise than by HTTP. */
  public static JsonNode tree(Object answer) {
    return MAPPER.valueToTree(answer);
  }

  /** How a word is written. */
  public static String code(Enum<?> word) {
    return word instanceof Coded coded
        ? coded.code()
        : word.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void numbers(JsonGenerator json, double[] values) throws IOException {
    json.writeStartArray();
    for (double value : values) {
      JsonNumber.write(json, value);
    }
    json.writeEndArray();
  }

  /** How a value is written. */
  private interface Writing<T> {
    void write(JsonGenerator json, T value) throws IOException;
  }

  private static final class Written<T> extends JsonSerializer<T> {

    private final Writing<T> writing;

    Written(Writing<T> writing) {
      this.writing = writing;
    }

    @Override
    public void serialize(T value, JsonGenerator json, SerializerProvider all) throws IOException {
      writing.write(json, value);
    }
  }
}
