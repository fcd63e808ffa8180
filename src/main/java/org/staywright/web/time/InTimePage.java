package org.staywright.web.time;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.document.draw.Drawing;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.job.Corner;
import org.staywright.fit.job.Job;
import org.staywright.fit.time.Chance;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.GasBeyond;
import org.staywright.form.time.ChanceRequest;
import org.staywright.form.time.MotionRequest;
import org.staywright.gas.BeyondEquation;
import org.staywright.motion.Motion;
import org.staywright.motion.MotionSetup;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.chart.ChartFile;
import org.staywright.web.field.FormFields;
import org.staywright.web.fit.AskedPart;
import org.staywright.web.fit.BeyondWords;
import org.staywright.web.fit.FitTemplates;
import org.staywright.web.fit.InTimeView;
import org.staywright.web.fit.OutView;
import org.staywright.web.query.Bench;
import org.staywright.web.query.InTimeQuery;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.wording.Wording;

/** What one part does in time in its job: seen moving, in figures, and how sure it is. */
@Path("/in-time")
@Produces(MediaType.TEXT_HTML)
public final class InTimePage {

  private final CurrentRange stock;

  InTimePage(CurrentRange stock) {
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(
      @Context UriInfo uri, @QueryParam("pick") @DefaultValue("") String pick) {
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    Range range = stock.get();
    Job job = JobForm.read(query.tree(), range);
    Wording wording = query.bench().wording();
    AskedPart judged = AskedPart.of(job, range, pick.strip(), wording);
    if (judged.fit() == null) {
      return FitTemplates.out(OutView.of(query, judged));
    }
    Uncertainties usual = Uncertainties.usual(job, judged.fit().part());
    TimeFigures figures = TimeFigures.of(job, judged.fit()).orElse(null);
    Corner worst = figures == null ? Corner.NOMINAL : figures.worstFailing();
    InTimeQuery asked =
        InTimeQuery.of(query, judged.pick(), uri.getQueryParameters(), worst, usual);
    return new Asking(asked, judged, figures, range, wording).page();
  }

  /** One of its charts over time as a file. */
  @GET
  @Path(ChartFile.PATH)
  @Produces(MediaType.WILDCARD)
  public RestResponse<String> chart(
      @Context UriInfo uri,
      @QueryParam("pick") @DefaultValue("") String pick,
      @PathParam("chart") String chart,
      @PathParam("type") String type) {
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    Range range = stock.get();
    Job job = JobForm.read(query.tree(), range);
    Wording wording = query.bench().wording();
    Fit fit = AskedPart.of(job, range, pick.strip(), wording).fit();
    List<Drawing> charts =
        Optional.ofNullable(fit)
            .flatMap(each -> TimeFigures.of(job, each))
            .map(figures -> MotionsView.drawings(job, figures, wording))
            .orElseThrow(NotFoundException::new);
    return ChartFile.of(charts, chart, type, fit.part().number(), wording);
  }

  /** One page in the making. */
  private static final class Asking {

    private final InTimeQuery asked;
    private final AskedPart judged;

    /** Null where they cannot be told. */
    private final TimeFigures figures;

    private final Range range;
    private final Wording wording;
    private final List<Fault> faults = new ArrayList<>();

    /** What the gas of the motion asked for would leave, in words; null where it does not. */
    private String beyond;

    Asking(InTimeQuery asked, AskedPart judged, TimeFigures figures, Range range, Wording wording) {
      this.asked = asked;
      this.judged = judged;
      this.figures = figures;
      this.range = range;
      this.wording = wording;
    }

    TemplateInstance page() {
      Job job = judged.job();
      PlayedView played = played();
      ChanceView chance = asked.chances() ? chance() : null;
      JobQuery query = asked.job();
      return Templates.motion(
          query.bench(),
          new FormFields(wording, asked.shape(), asked.typed(), faults, List.of()),
          query.pairs(),
          judged.pick(),
          query.address(judged.pick()),
          figures == null ? null : InTimeView.of(job, figures, wording),
          figures == null ? null : MotionsView.of(job, figures, wording),
          played,
          beyond,
          chance);
    }

    private PlayedView played() {
      try {
        MotionRequest request = asked.motion(range);
        return played(request.of().job(), judged.fit(), request.scene(judged.fit()));
      } catch (Refusal refusal) {
        faults.addAll(refusal.faults());
        return null;
      }
    }

    private PlayedView played(Job job, Fit fit, MotionSetup scene) {
      try {
        return PlayedView.of(job, fit, Motion.of(scene), scene.springs(), wording);
      } catch (BeyondEquation gas) {
        beyond = BeyondWords.of(GasBeyond.of(gas), "motion", wording);
        return null;
      }
    }

    private ChanceView chance() {
      try {
        ChanceRequest request = asked.chance(range);
        return ChanceView.of(
            Chance.of(
                request.of().job(),
                judged.fit(),
                request.spreads(),
                request.draws(),
                request.seed()),
            wording);
      } catch (Refusal refusal) {
        faults.addAll(refusal.faults());
        return null;
      }
    }
  }

  @CheckedTemplate(basePath = "time")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance motion(
        Bench bench,
        FormFields form,
        List<JobQuery.Pair> job,
        Pick pick,
        String back,
        InTimeView time,
        MotionsView motions,
        PlayedView played,
        String beyond,
        ChanceView chance);
  }
}
