package org.staywright.web.mounts;

import static org.staywright.unit.Unit.KILOGRAM;
import static org.staywright.unit.Unit.MILLIMETRE;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.form.job.CentreForm;
import org.staywright.form.schema.AnswerJson;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.mechanism.Body;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Typed;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;
import org.staywright.web.start.Way;
import org.staywright.wording.Wording;

/** Finds a flap's centre of mass in one of three ways and hands it to the job it came with. */
@Path("/centre")
@Produces(MediaType.TEXT_HTML)
public final class CentrePage {

  /** What the ways ask for that a job knows, by their fields. */
  private static final Map<String, String> KNOWN =
      Map.of(
          "panel.massKg", "load.massKg",
          "panel.farMm.x", "load.handleMm.x",
          "panel.farMm.y", "load.handleMm.y",
          "weighing.massKg", "load.massKg",
          "weighing.handleMm.x", "load.handleMm.x",
          "weighing.handleMm.y", "load.handleMm.y",
          "weighing.opens", "load.opens",
          "weighing.tiltDeg", "load.tiltDeg");

  /**
   * What was found, in words.
   *
   * @param place of the centre of mass
   * @param mass altogether
   * @param use what the link says
   * @param address of the bench with it
   */
  public record Result(String place, String mass, String use, String address) {}

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    JobQuery given = JobQuery.of(Bench.FLAP, uri.getQueryParameters());
    JobQuery job = given.isEmpty() ? Way.LEVEL_LID.query() : given;
    Wording wording = Bench.FLAP.wording();
    Typed typed = Typed.of(CentreForm.SHAPE, uri.getQueryParameters(), wording);
    if (typed.values().isEmpty()) {
      return page(job, filled(job), List.of(), null);
    }
    try {
      JsonNode tree = FlatForm.typed(CentreForm.SHAPE, typed.values());
      Body body = CentreForm.read(new JsonText(tree, List.of()));
      return page(job, typed, List.of(), result(job, body, wording));
    } catch (Refusal refusal) {
      return page(job, typed, refusal.faults(), null);
    }
  }

  private static TemplateInstance page(
      JobQuery job, Typed typed, List<Fault> faults, Result result) {
    Map<String, List<String>> values = new LinkedHashMap<>(filled(job).values());
    values.putAll(typed.values());
    FormFields form =
        new FormFields(
            Bench.FLAP.wording(),
            CentreForm.SHAPE,
            new Typed(values, typed.texts()),
            faults,
            List.of());
    return Templates.centre(form, job.pairs(), job.address(), result);
  }

  /** What the job knows already. */
  private static Typed filled(JobQuery job) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    values.put("panel.nearMm.x", List.of("0"));
    values.put("panel.nearMm.y", List.of("0"));
    KNOWN.forEach(
        (name, from) -> {
          if (job.values().containsKey(from)) {
            values.put(name, job.values().get(from));
          }
        });
    return new Typed(values, Map.of());
  }

  private static Result result(JobQuery job, Body body, Wording wording) {
    JsonNode found = AnswerJson.tree(CentreForm.CentreAnswer.of(body));
    JobQuery with =
        job.with("load.massKg", found.get("massKg").asText())
            .with("load.centreOfMassMm.x", found.at("/centreOfMassMm/x").asText())
            .with("load.centreOfMassMm.y", found.at("/centreOfMassMm/y").asText());
    String name = String.join("", job.values().getOrDefault("name", List.of("")));
    return new Result(
        wording.text(
            "way.centre.found",
            wording.quantity(body.centre().x(), MILLIMETRE, 1),
            wording.quantity(body.centre().y(), MILLIMETRE, 1)),
        wording.text("way.centre.found.mass", wording.quantity(body.mass(), KILOGRAM, 2)),
        wording.text("way.centre.use", name.isBlank() ? wording.text("way.centre.unnamed") : name),
        with.address());
  }

  @CheckedTemplate(basePath = "mounts")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance centre(
        FormFields form, List<JobQuery.Pair> job, String back, Result result);
  }
}
