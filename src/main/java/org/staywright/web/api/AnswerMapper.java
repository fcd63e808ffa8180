package org.staywright.web.api;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;
import org.staywright.form.schema.AnswerJson;

/** Teaches the program's mapper how answers are written. */
@Singleton
public final class AnswerMapper implements ObjectMapperCustomizer {

  @Override
  public void customize(ObjectMapper mapper) {
    mapper.registerModule(new AnswerJson());
  }
}
