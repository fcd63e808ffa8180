package org.staywright.form.job;

import static org.staywright.unit.Unit.CELSIUS;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.staywright.fit.clear.Contradictions;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Weights;
import org.staywright.form.schema.JsonText;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Finish;
import org.staywright.part.FittingType;
import org.staywright.part.Range;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/** A job from its JSON: every fault at once, or the job in SI. */
public final class JobForm {

  private static final List<String> WEIGHTS =
      List.of(
          "/weights/effort",
          "/weights/margin",
          "/weights/landing",
          "/weights/price",
          "/weights/supply");

  private final JobTree tree;

  private JobForm(JsonNode tree) {
    this.tree = new JobTree(tree);
  }

  /** The job a document describes, where nothing beside its springs is considered: refused. */
  public static Job read(JsonNode document) {
    JobForm form = new JobForm(withDefaults(document));
    form.tree.refuse("/beside/0/partNumber", "nothing-beside-in-this");
    return form.consistent(form.job());
  }

  /**
   * The job a document describes; a refusal names every fault in it.
   *
   * @param range that parts beside the springs are taken from
   */
  public static Job read(JsonNode document, Range range) {
    JobForm form = new JobForm(withDefaults(document));
    return form.consistent(BesideForm.added(form.job(), form.tree, range));
  }

  /** The job of a document that was taken once: what no part could do is then for it to be told. */
  public static Job stored(JsonNode document, Range range) {
    JobForm form = new JobForm(withDefaults(document));
    return BesideForm.added(form.job(), form.tree, range);
  }

  /** Refuses what contradicts itself. */
  private Job consistent(Job job) {
    List<Fault> faults = contradictions(tree, Contradictions.of(job));
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return job;
  }

  /** With the values as they were given. */
  public static List<Fault> contradictions(JobTree tree, List<Fault> found) {
    return found.stream()
        .map(f -> tree.fault(f.where(), f.bound(), f.code()).at("#" + f.where()))
        .toList();
  }

  /** The document with every default filled in; a refusal names every fault in it. */
  public static ObjectNode withDefaults(JsonNode document) {
    return withDefaults(new JsonText(document, List.of()));
  }

  /** The body with every default filled in; a refusal names every fault in it. */
  public static ObjectNode withDefaults(JsonText body) {
    List<Fault> faults = new ArrayList<>(body.repeated());
    JsonNode tree = checked(body.tree(), "#", faults);
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return (ObjectNode) tree;
  }

  /** Every fault of a document; empty where it is sound. */
  public static List<Fault> faults(JsonNode document) {
    List<Fault> faults = new ArrayList<>();
    checked(document, "#", faults);
    return faults;
  }

  private static JsonNode checked(JsonNode document, String at, List<Fault> faults) {
    JsonNode tree = JobShape.JOB.read(document, at, faults);
    if (tree != null) {
      faults.addAll(crossFaults(tree, at));
    }
    return tree;
  }

  /** What is wrong between the fields of a job that stands somewhere in a larger document. */
  public static List<Fault> crossFaults(JsonNode tree, String at) {
    return new JobForm(tree).crossFaults().stream().map(f -> f.at(at + f.where())).toList();
  }

  /** What is wrong between fields that are each sound alone. */
  private List<Fault> crossFaults() {
    List<Fault> faults = new ArrayList<>();
    Optional<LoadForm> load = LoadForms.of(tree.text("/load/type"));
    load.ifPresent(form -> faults.addAll(form.faults(tree)));
    // Null where nothing was given; what was given and is at fault has been left out.
    if (tree.root().at("/mounts").isNull() && load.map(LoadForm::mounted).orElse(true)) {
      String fields = "{" + String.join(", ", LoadShape.MOUNTS.fields().keySet()) + "}";
      faults.add(new Fault("/mounts", null, fields, "missing"));
    }
    load.ifPresent(form -> senseless(form, faults));
    atMost("/requirements/staysPutFromDeg", "/requirements/staysPutToDeg", faults);
    atMost("/requirements/staysPutFromMm", "/requirements/staysPutToMm", faults);
    if (WEIGHTS.stream().allMatch(at -> tree.number(at) == 0)) {
      faults.add(tree.fault(WEIGHTS.get(0), "> 0", "no-weight"));
    }
    if (tree.given("/zones") && load.map(form -> !form.mounted()).orElse(false)) {
      faults.add(tree.fault("/zones", "", "no-mounts-here"));
    }
    if (tree.size("/beside") > 0 && load.map(form -> !form.mounted()).orElse(false)) {
      faults.add(tree.fault("/beside/0/partNumber", "", "nothing-beside-here"));
    }
    faults.addAll(ZonesShape.faults(tree));
    atMost("/conditions/minC", "/conditions/nominalC", faults);
    atMost("/conditions/nominalC", "/conditions/maxC", faults);
    atMost("/load/lightestMassKg", "/load/massKg", faults);
    return faults;
  }

  private void senseless(LoadForm load, List<Fault> faults) {
    Set<String> senseless = new LinkedHashSet<>(RequirementsShape.ALL.fields().keySet());
    senseless.removeAll(RequirementsShape.of(load).fields().keySet());
    for (String name : senseless) {
      String at = "/requirements/" + name;
      boolean asked = tree.given(at) && RequirementsShape.ALL.fields().get(name).fallback() == null;
      if (asked) {
        faults.add(tree.fault(at, load.shape().name(), "not-with-this-load"));
      }
    }
  }

  /** The job of a document that has been checked already. */
  public static Job unchecked(JsonNode tree) {
    return new JobForm(tree).job();
  }

  private void atMost(String lower, String upper, List<Fault> faults) {
    if (tree.given(lower) && tree.given(upper) && tree.number(lower) > tree.number(upper)) {
      String name = upper.substring(upper.lastIndexOf('/') + 1);
      String bound = "≤ " + name + " = " + tree.root().at(upper);
      faults.add(tree.fault(lower, bound, "out-of-order"));
    }
  }

  private Job job() {
    LoadForm load = LoadForms.of(tree.text("/load/type")).orElseThrow();
    return new Job(
        tree.text("/name"),
        load.mechanism(tree),
        Stream.iterate(0, i -> i + 1)
            .limit(tree.root().at("/springCounts").size())
            .map(i -> tree.root().at("/springCounts/" + i).intValue())
            .toList(),
        wish(tree.text("/fittings/rodEnd")),
        wish(tree.text("/fittings/tubeEnd")),
        new Job.Conditions(
            tree.si("/conditions/minC", CELSIUS),
            tree.si("/conditions/nominalC", CELSIUS),
            tree.si("/conditions/maxC", CELSIUS),
            tree.number("/conditions/serviceYears"),
            tree.number("/conditions/cyclesPerYear")),
        RequirementsShape.read(tree, load),
        new Job.Filters(
            families(),
            tree.choice("/filters/finish", Finish.class),
            tree.flag("/filters/inStockOnly")),
        tree.choice("/rankBy", RankBy.class),
        tree.root().at("/limit").intValue(),
        Weights.of(
            tree.number("/weights/effort"),
            tree.number("/weights/margin"),
            tree.number("/weights/landing"),
            tree.number("/weights/price"),
            tree.number("/weights/supply")),
        List.of());
  }

  private Set<Family> families() {
    Set<Family> families = EnumSet.noneOf(Family.class);
    for (JsonNode word : tree.root().at("/filters/families")) {
      families.add(Coded.of(Family.class, word.textValue()).orElseThrow());
    }
    return families;
  }

  /** A type or a number; null for null. */
  public static Job.FittingWish wish(String word) {
    if (word == null) {
      return null;
    }
    return Coded.of(FittingType.class, word)
        .map(type -> new Job.FittingWish(type, null))
        .orElseGet(() -> new Job.FittingWish(null, word));
  }
}
