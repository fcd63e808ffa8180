package org.staywright.web.job;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.staywright.job.Jobs;
import org.staywright.job.SavedJob;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Input;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.SeenVersion;
import org.staywright.wording.Wording;

/**
 * What was typed for a job, beside the job as it is saved now, where one cannot simply take the
 * place of the other.
 *
 * @param kind {@code stale}: changed in between, {@code gone}: removed in between, {@code choice}:
 *     the part chosen before does not fit what was typed
 * @param reason in words, "" for none
 * @param name of the job, as typed
 * @param chosen for the job as it is saved now, "" for nothing
 * @param changes field by field
 * @param job as typed, for the next form
 * @param pick chosen with it, "" for none
 * @param seen the saved job as it is now, "" where it is gone
 * @param back address of the form as typed
 */
public record Conflict(
    String kind,
    String reason,
    String name,
    String chosen,
    List<Change> changes,
    List<JobQuery.Pair> job,
    String pick,
    String seen,
    String back) {

  /**
   * @param label of the field
   * @param saved as it is now
   * @param typed as sent
   */
  public record Change(String label, String saved, String typed) {}

  /**
   * @param now null where it is gone
   */
  static Conflict of(
      String kind, String reason, JobQuery typed, String pick, SavedJob now, Wording wording) {
    String seen = now == null ? "" : SeenVersion.of(now).toString();
    return new Conflict(
        kind,
        reason,
        typed.values().getOrDefault("name", List.of("")).get(0),
        now == null ? "" : JobsView.Row.of(now, wording).chosen(),
        now == null ? List.of() : changes(JobQuery.of(Jobs.document(now), seen), typed, wording),
        typed.pairs().stream().filter(pair -> !pair.name().equals(JobQuery.SAVED)).toList(),
        pick == null ? "" : pick,
        seen,
        typed.address());
  }

  private static List<Change> changes(JobQuery saved, JobQuery typed, Wording wording) {
    FormFields now = fields(saved, wording);
    FormFields then = fields(typed, wording);
    Set<String> names = new LinkedHashSet<>(saved.values().keySet());
    names.addAll(typed.values().keySet());
    List<Change> changes = new ArrayList<>();
    for (String name : names) {
      Input one = now.of(name);
      Input other = then.of(name);
      if (!given(one).equals(given(other))) {
        changes.add(new Change(one.label(), shown(one), shown(other)));
      }
    }
    return changes;
  }

  private static FormFields fields(JobQuery query, Wording wording) {
    return new FormFields(wording, query.bench().shape(), query.values(), List.of());
  }

  private static List<String> given(Input input) {
    return input.values().stream().filter(value -> !value.isBlank()).toList();
  }

  /** The words of an option, else the value with its unit. */
  private static String shown(Input input) {
    String value =
        input.options().isEmpty()
            ? String.join(", ", input.values())
            : input.options().stream()
                .filter(Input.Option::chosen)
                .map(Input.Option::label)
                .collect(Collectors.joining(", "));
    return value.isEmpty() || input.unit().isEmpty() ? value : value + "\u00a0" + input.unit();
  }
}
