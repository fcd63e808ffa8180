package org.staywright.form.part;

import static com.fasterxml.jackson.annotation.JsonInclude.Include.NON_NULL;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.form.schema.AnswerShape;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Shape;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.Mounting;
import org.staywright.part.Offer;
import org.staywright.part.Part;
import org.staywright.spring.Locking;
import org.staywright.spring.LockingSpring;

/**
 * A part of the range.
 *
 * @param description in words, the range's own or made from the figures
 * @param numbers that its family has, as {@link PartColumn} names them
 * @param locking of a spring that locks
 * @param derived names of the figures that were worked out rather than given
 */
public record PartAnswer(
    @Schema(ref = "part-number") String partNumber,
    String description,
    Family family,
    Finish finish,
    String rodThread,
    String tubeThread,
    @JsonAnyGetter @Schema(hidden = true) Map<String, Double> numbers,
    @JsonInclude(NON_NULL) @Nullable Locking locking,
    Mounting mounting,
    @JsonUnwrapped Offer offer,
    List<String> derived) {

  /** The numbers of a part: there where every family has them. */
  public static final Shape NUMBERS =
      Shape.of(
          "part",
          Stream.of(PartColumn.values())
              .map(
                  column ->
                      new Field(
                          column.field(), AnswerShape.NUMBER, column.isOfEveryFamily(), null, null))
              .toArray(Field[]::new));

  public static PartAnswer of(Part part, String description) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    PartColumn.of(part.family()).forEach(each -> numbers.put(each.field(), each.of(part)));
    return new PartAnswer(
        part.number(),
        description,
        part.family(),
        part.finish(),
        part.ends().rod(),
        part.ends().tube(),
        numbers,
        part.spring() instanceof LockingSpring spring ? spring.locking() : null,
        part.mounting(),
        part.offer(),
        part.derived());
  }
}
