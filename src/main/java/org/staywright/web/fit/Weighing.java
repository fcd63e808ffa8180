package org.staywright.web.fit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.job.JobShape;
import org.staywright.unit.Fault;
import org.staywright.web.field.FieldGroup;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Typed;
import org.staywright.web.query.JobQuery;

/**
 * The weights of a score, to be changed where its terms are seen.
 *
 * @param fields one each
 * @param rest of the job, for the form to carry along unseen
 */
public record Weighing(List<FieldGroup.Member> fields, List<JobQuery.Pair> rest) {

  private static final String WEIGHTS = "weights.";

  /**
   * @param faults in the weights as typed
   */
  public static Weighing of(JobQuery query, List<Fault> faults) {
    FormFields form =
        new FormFields(
            query.bench().wording(), query.bench().shape(), query.typed(), faults, List.of());
    return new Weighing(
        form.groups().stream()
            .filter(group -> group.code().equals(JobShape.Section.WEIGHTS.code()))
            .flatMap(group -> group.members().stream())
            .toList(),
        plain(query).pairs());
  }

  /** The same job with the usual weights. */
  public static JobQuery plain(JobQuery query) {
    Map<String, List<String>> rest = new LinkedHashMap<>(query.values());
    rest.keySet().removeIf(name -> name.startsWith(WEIGHTS));
    return new JobQuery(query.bench(), new Typed(rest, query.typed().texts()), query.saved());
  }
}
