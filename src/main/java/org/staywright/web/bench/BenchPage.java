package org.staywright.web.bench;

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
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.document.chart.FitCharts;
import org.staywright.document.draw.Drawing;
import org.staywright.document.job.Specification;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.rank.Why;
import org.staywright.form.job.JobForm;
import org.staywright.part.Coded;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.web.chart.ChartFile;
import org.staywright.web.field.FormFields;
import org.staywright.web.fit.AskedPart;
import org.staywright.web.fit.Cleared;
import org.staywright.web.fit.FitTemplates;
import org.staywright.web.fit.FitView;
import org.staywright.web.fit.IdealView;
import org.staywright.web.fit.OutView;
import org.staywright.web.fit.RejectedView;
import org.staywright.web.fit.WhyView;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.ErrorPages;
import org.staywright.web.shell.PageText;
import org.staywright.web.shell.Pages;

/**
 * A mechanism described in a form, and the stock ranked for it: one address holds the whole job.
 */
public abstract class BenchPage {

  private final CurrentRange stock;
  private final Bench bench;

  /** What the form opens with: nobody starts from empty fields. */
  private final JobQuery opening;

  BenchPage(CurrentRange stock, Bench bench) {
    this.stock = stock;
    this.bench = bench;
    this.opening = bench.opening();
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    return page(asked(uri), List.of());
  }

  /**
   * @param misread what was wrong with a file, in words
   */
  public TemplateInstance page(JobQuery asked, List<String> misread) {
    return page(asked, stock.get(), misread);
  }

  /** The bench that a job is described on, with what was typed and what is wrong with it. */
  public static TemplateInstance page(JobQuery asked, Range range, List<String> misread) {
    Answer answer = Answer.to(asked, range);
    return Templates.bench(
        asked.bench(),
        answer.query(),
        answer.form(),
        answer.held(),
        answer.ranking(),
        false,
        misread);
  }

  /** What changes on the page while its form is filled in. */
  @GET
  @Path("live")
  public RestResponse<String> live(@Context UriInfo uri) {
    Answer answer = Answer.to(asked(uri), stock.get());
    return RestResponse.ResponseBuilder.ok(
            Templates.live(bench, answer.query(), answer.form(), answer.held(), answer.ranking())
                .render())
        .type(ErrorPages.HTML)
        .header("HX-Replace-Url", answer.query().address())
        .build();
  }

  /** What one spring does while the side view is being changed. */
  @GET
  @Path("step")
  public TemplateInstance step(
      @Context UriInfo uri, @QueryParam("pick") String pick, @QueryParam("shown-at") String shown) {
    return Templates.step(
        bench,
        HeldSpring.of(asked(uri), stock.get(), pick == null ? "" : pick.strip(), number(shown)));
  }

  /** 0 for what is no number: a drawing can always be made. */
  private static double number(String text) {
    try {
      double number = text == null ? 0 : Double.parseDouble(text);
      return Double.isFinite(number) ? number : 0;
    } catch (NumberFormatException none) {
      return 0;
    }
  }

  /** One part in full, as a page, whether it fits or not. */
  @GET
  @Path("fit")
  public TemplateInstance fit(
      @Context UriInfo uri, @QueryParam("pick") @DefaultValue("") String pick) {
    JobQuery query = asked(uri);
    AskedPart judged = judged(query, pick);
    return judged.fit() == null
        ? FitTemplates.out(OutView.of(query, judged))
        : FitTemplates.fit(
            bench,
            query.pairs(),
            query.address(),
            FitView.of(judged.job(), judged.fit(), cleared(query, judged.job()), bench.wording()));
  }

  /** One of that page's charts as a file. */
  @GET
  @Path("fit/" + ChartFile.PATH)
  @Produces(MediaType.WILDCARD)
  public RestResponse<String> chart(
      @Context UriInfo uri,
      @QueryParam("pick") @DefaultValue("") String pick,
      @PathParam("chart") String chart,
      @PathParam("type") String type) {
    AskedPart judged = judged(asked(uri), pick);
    if (judged.fit() == null) {
      throw new NotFoundException();
    }
    List<Drawing> charts = FitCharts.files(judged.job(), judged.fit(), bench.wording());
    return ChartFile.of(charts, chart, type, judged.fit().part().number(), bench.wording());
  }

  /** The same for a place in the ranking. */
  @GET
  @Path("fit/detail")
  public TemplateInstance detail(
      @Context UriInfo uri, @QueryParam("pick") @DefaultValue("") String pick) {
    AskedPart judged = judged(asked(uri), pick);
    if (judged.fit() == null) {
      throw new NotFoundException();
    }
    return FitTemplates.detail(
        bench, FitView.of(judged.job(), judged.fit(), Cleared.NOT, bench.wording()));
  }

  /** The near misses with what would make them fit, once they are looked at. */
  @GET
  @Path("near")
  public TemplateInstance near(@Context UriInfo uri) {
    Answer answer = Answer.to(asked(uri), stock.get(), true);
    if (answer.ranking() == null) {
      throw new NotFoundException();
    }
    return FitTemplates.rows(bench, answer.ranking().near(), true);
  }

  /** Why a part is where it is in the ranking. */
  @GET
  @Path("why")
  public TemplateInstance why(@Context UriInfo uri, @QueryParam("partNumber") String partNumber) {
    JobQuery query = asked(uri);
    Range range = stock.get();
    String number = partNumber == null ? "" : partNumber.strip().toUpperCase(Locale.ROOT);
    Optional<Part> part = range.part(number);
    if (part.isEmpty()) {
      return FitTemplates.why(bench.path(), WhyView.unknown(query, number));
    }
    Job job = JobForm.read(query.tree(), range);
    Why why = Why.of(job, range, part.get());
    return FitTemplates.why(
        bench.path(), WhyView.of(query, job, why, cleared(query, job), bench.wording()));
  }

  /** What is out for one reason, a page of it. */
  @GET
  @Path("rejected")
  public TemplateInstance rejected(
      @Context UriInfo uri,
      @QueryParam("reason") @DefaultValue("") String reason,
      @QueryParam("page") @DefaultValue("1") String page) {
    JobQuery query = asked(uri);
    Range range = stock.get();
    return FitTemplates.rejected(
        RejectedView.of(
            query,
            JobForm.read(query.tree(), range),
            range,
            Coded.of(Rejection.class, reason).orElseThrow(NotFoundException::new),
            Pages.asked(page),
            bench.wording()));
  }

  /** What would be made for the job, beside the best of stock. */
  @GET
  @Path("ideal")
  public TemplateInstance ideal(@Context UriInfo uri) {
    JobQuery query = asked(uri);
    Job job = toMakeFor(query);
    return FitTemplates.ideal(
        IdealView.of(query, job, Ideal.of(job, stock.get()), bench.wording()),
        query.pairs(),
        query.address() + "#result");
  }

  /** The same for a maker to quote. */
  @GET
  @Path("specification.pdf")
  @Produces("application/pdf")
  public Response specification(@Context UriInfo uri) {
    Job job = toMakeFor(asked(uri));
    Ideal ideal = Ideal.of(job, stock.get());
    if (ideal.proposed() == null) {
      throw new NotFoundException();
    }
    return Download.shown(Specification.pdf(job, ideal, PageText.wording()), "specification.pdf");
  }

  private Job toMakeFor(JobQuery query) {
    Job job = JobForm.read(query.tree(), stock.get());
    if (!Ideal.askedOf(job)) {
      throw new NotFoundException();
    }
    return job;
  }

  private Cleared cleared(JobQuery query, Job job) {
    return Cleared.of(JobForm.withDefaults(query.tree()), job, stock.get(), bench.wording());
  }

  private AskedPart judged(JobQuery query, String asked) {
    return AskedPart.of(
        JobForm.read(query.tree(), stock.get()), stock.get(), asked.strip(), bench.wording());
  }

  private JobQuery asked(UriInfo uri) {
    JobQuery asked = JobQuery.of(bench, uri.getQueryParameters());
    return asked.isEmpty() ? opening : asked;
  }

  @CheckedTemplate(basePath = "bench")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance bench(
        Bench bench,
        JobQuery query,
        FormFields form,
        HeldSpring held,
        RankingView ranking,
        boolean live,
        List<String> misread);

    static native TemplateInstance live(
        Bench bench, JobQuery query, FormFields form, HeldSpring held, RankingView ranking);

    static native TemplateInstance step(Bench bench, HeldSpring held);
  }
}
