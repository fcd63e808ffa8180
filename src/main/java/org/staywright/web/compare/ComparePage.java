package org.staywright.web.compare;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.document.chart.OverlayChart;
import org.staywright.document.draw.Drawing;
import org.staywright.fit.assess.Assessment;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Score;
import org.staywright.form.job.JobForm;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.chart.ChartFile;
import org.staywright.web.fit.Weighing;
import org.staywright.web.job.Ticked;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.web.shell.PageText;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/** Up to five parts side by side: ticked in a ranking, or chosen for saved jobs. */
@Path("/compare")
@Produces(MediaType.TEXT_HTML)
public class ComparePage {

  private static final String LETTERS = "ABCDE";

  private final Jobs jobs;
  private final Ordering ordering;
  private final CurrentRange stock;

  ComparePage(Jobs jobs, Ordering ordering, CurrentRange stock) {
    this.jobs = jobs;
    this.ordering = ordering;
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(
      @Context UriInfo uri,
      @QueryParam("pick") List<String> picks,
      @QueryParam("job") List<String> ids) {
    Field field = new Field(PageText.wording());
    if (!ids.isEmpty()) {
      saved(ids, field);
      return Templates.compare(
          CompareView.of(field.rivals, field.left, null, List.of(), "/jobs", field.wording));
    }
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    if (query.isEmpty()) {
      return Templates.compare(
          CompareView.of(List.of(), List.of(), null, List.of(), "/flap", field.wording));
    }
    JobQuery sound = query;
    List<Fault> faults = List.of();
    try {
      ranked(read(query), picks, field);
    } catch (Refusal refusal) {
      // Whatever else may be wrong: weights are typed on this very page.
      sound = Weighing.plain(query);
      faults = refusal.faults();
      ranked(read(sound), picks, field);
    }
    return Templates.compare(
        CompareView.of(
            field.rivals,
            field.left,
            Weighing.of(query, faults),
            sound.pairs(),
            sound.address() + "#result",
            field.wording));
  }

  private Job read(JobQuery query) {
    return JobForm.read(query.tree(), stock.get());
  }

  /** The chart as a file. */
  @GET
  @Path(ChartFile.PATH)
  @Produces(MediaType.WILDCARD)
  public RestResponse<String> chart(
      @Context UriInfo uri,
      @QueryParam("pick") List<String> picks,
      @QueryParam("job") List<String> ids,
      @PathParam("chart") String chart,
      @PathParam("type") String type) {
    Field field = new Field(PageText.wording());
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    if (!ids.isEmpty()) {
      saved(ids, field);
    } else if (!query.isEmpty()) {
      ranked(read(query), picks, field);
    }
    List<Drawing> charts =
        Optional.ofNullable(CompareView.chart(field.rivals, field.wording)).stream().toList();
    return ChartFile.of(charts, chart, type, "staywright", field.wording);
  }

  private void ranked(Job job, List<String> picks, Field field) {
    Range range = stock.get();
    for (String text : new LinkedHashSet<>(picks)) {
      Optional<Pick> pick = Pick.read(text);
      Optional<Part> part = pick.flatMap(each -> range.part(each.partNumber()));
      if (part.isEmpty()) {
        field.leave("compare.unknown", text);
      } else {
        int count = pick.get().count();
        field.add(job, Assessment.of(job, range, part.get(), count), "", text.replace("!", ""));
      }
    }
    field.score(job, range);
  }

  private void saved(List<String> ids, Field field) {
    Ticked ticked = Ticked.of(ids, jobs, field.wording);
    field.left.addAll(ticked.missing());
    for (SavedJob job : ticked.jobs()) {
      Chosen chosen = ordering.chosen(job);
      field.add(chosen.job(), chosen.assessment(), job.id.toString(), chosen.choice().part());
    }
  }

  /** Who stands side by side, and who does not. */
  private static final class Field {

    private final Wording wording;
    private final List<Rival> rivals = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    Field(Wording wording) {
      this.wording = wording;
    }

    void leave(String key, Object... values) {
      left.add(wording.text(key, values));
    }

    void score(Job job, Range range) {
      List<Score> scores = Score.of(job, range, rivals.stream().map(Rival::fit).toList());
      for (int i = 0; i < rivals.size(); i++) {
        rivals.set(i, rivals.get(i).scored(scores.get(i)));
      }
    }

    void add(Job job, Assessment assessment, String saved, String name) {
      if (assessment.fit() == null) {
        leave("compare.out", name, FitText.in(wording).rejection(assessment.rejection()));
      } else if (rivals.size() == OverlayChart.MOST) {
        leave("compare.too-many", name, OverlayChart.MOST);
      } else {
        String letter = LETTERS.substring(rivals.size(), rivals.size() + 1);
        rivals.add(new Rival(letter, job, assessment.fit(), null, saved));
      }
    }
  }

  @CheckedTemplate(basePath = "compare")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance compare(CompareView compare);
  }
}
