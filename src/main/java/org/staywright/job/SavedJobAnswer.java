package org.staywright.job;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.form.fit.EndFittings;
import org.staywright.job.order.Choice;
import org.staywright.mechanism.Mounts.RodEnd;

/**
 * A saved job: the job and what was added when it was saved.
 *
 * @param job with every default filled in
 * @param changed last
 */
public record SavedJobAnswer(
    long id,
    Instant created,
    Instant changed,
    @JsonAnyGetter @Schema(hidden = true) Map<String, JsonNode> job,
    @Nullable ChoiceAnswer choice) {

  /**
   * The part chosen for it.
   *
   * @param count of springs in a set
   * @param fittings not of a column, which needs none
   * @param spares of each line beyond the sets
   * @param made when it was frozen
   */
  public record ChoiceAnswer(
      @Schema(ref = "part-number") String partNumber,
      int count,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable EndFittings fittings,
      @Schema(ref = "frame-or-moving") RodEnd rodEndAt,
      int sets,
      int spares,
      boolean brackets,
      boolean evenIfMisfit,
      int stockRevision,
      Instant made) {

    private static ChoiceAnswer of(Choice choice) {
      return new ChoiceAnswer(
          choice.part(),
          choice.count(),
          choice.fitted() ? new EndFittings(choice.rodFitting(), choice.tubeFitting()) : null,
          choice.rodEndAt(),
          choice.sets(),
          choice.spares(),
          choice.brackets(),
          choice.despite(),
          choice.revision(),
          choice.made());
    }
  }

  public static SavedJobAnswer of(SavedJob saved) {
    Map<String, JsonNode> job = new LinkedHashMap<>();
    Jobs.document(saved).properties().forEach(each -> job.put(each.getKey(), each.getValue()));
    return new SavedJobAnswer(
        saved.id,
        saved.created,
        saved.changed,
        job,
        saved.choice == null ? null : ChoiceAnswer.of(saved.choice));
  }
}
