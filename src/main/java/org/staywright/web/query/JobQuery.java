package org.staywright.web.query;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.fit.job.Rejection;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.FlatForm;
import org.staywright.web.field.Slot;
import org.staywright.web.field.Typed;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.PageText;
import org.staywright.web.shell.SeenVersion;

/**
 * A job as it travels in a query: dotted names with texts.
 *
 * @param bench it is described on
 * @param typed of the fields a job has
 * @param saved the saved job it came from, as it was {@link SeenVersion}, "" for none
 */
public record JobQuery(Bench bench, Typed typed, String saved) {

  public static final String SAVED = "saved";
  private static final String TYPE = "load.type";

  /** One name with one value, as a hidden field carries it. */
  public record Pair(String name, String value) {}

  /** Of the bench that its type of load belongs to. */
  public static JobQuery of(Map<String, List<String>> parameters) {
    return of(Bench.of(parameters.getOrDefault(TYPE, List.of("")).get(0)), parameters);
  }

  /** Of a bench, whatever type of load it names. */
  public static JobQuery of(Bench bench, Map<String, List<String>> parameters) {
    Typed typed =
        Slot.closedUp(Typed.of(bench.shape(), Slot.renamed(parameters), PageText.wording()));
    Map<String, List<String>> values = typed.values();
    values.replaceAll((name, texts) -> name.startsWith("fittings.") ? last(texts) : texts);
    if (!values.isEmpty()) {
      values.put(TYPE, List.of(bench.type()));
    }
    return new JobQuery(bench, typed, parameters.getOrDefault(SAVED, List.of("")).get(0));
  }

  /** An end fitting may be given by its kind and, behind that, by its number, which wins. */
  private static List<String> last(List<String> texts) {
    List<String> given = texts.stream().filter(text -> !text.isBlank()).toList();
    return given.isEmpty() ? List.of() : given.subList(given.size() - 1, given.size());
  }

  /** The same job as a document has it. */
  public static JobQuery of(JsonNode tree, String saved) {
    JobQuery query = of(FlatForm.texts(JobShape.JOB, tree));
    return new JobQuery(query.bench, query.typed, saved);
  }

  /** Of the fields a job has, as they are meant. */
  public Map<String, List<String>> values() {
    return typed.values();
  }

  /** The same with another value. */
  public JobQuery with(String name, String value) {
    return with(name, List.of(value));
  }

  /** The same with other values. */
  public JobQuery with(String name, List<String> texts) {
    Map<String, List<String>> changed = new LinkedHashMap<>(values());
    changed.put(name, List.copyOf(texts));
    return new JobQuery(bench, new Typed(changed, typed.texts()), saved);
  }

  /** The zones of its mounts, for a form that does not show them. */
  public List<Pair> zones() {
    return pairs().stream().filter(pair -> pair.name().startsWith("zones.")).toList();
  }

  public boolean isEmpty() {
    return values().isEmpty();
  }

  public ObjectNode tree() {
    return FlatForm.typed(bench.shape(), values());
  }

  /** All of it, for a form to carry along unseen. */
  public List<Pair> pairs() {
    return all().entrySet().stream()
        .flatMap(e -> e.getValue().stream().map(value -> new Pair(e.getKey(), value)))
        .filter(pair -> !pair.value().isEmpty())
        .toList();
  }

  /** Of the page that shows this job. */
  public String address() {
    return new Address(bench.path(), all()).toString();
  }

  /** Of the page about one part for this job. */
  public String address(Pick pick) {
    return new Address(bench.path() + "/fit", all()).with("pick", pick).toString();
  }

  /** Of the list of what is out for a reason. */
  public Address rejected(Rejection reason) {
    return new Address(bench.path() + "/rejected", all()).with("reason", reason.code());
  }

  /** Of the specification of what would be made for it. */
  public String sheet() {
    return new Address(bench.path() + "/specification.pdf", all()).toString();
  }

  private Map<String, List<String>> all() {
    Map<String, List<String>> all = new LinkedHashMap<>(values());
    all.put(SAVED, List.of(saved));
    return all;
  }
}
