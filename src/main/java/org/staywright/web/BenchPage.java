package org.staywright.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.fit.Assessment;
import org.staywright.fit.Job;
import org.staywright.form.JobForm;
import org.staywright.part.Part;
import org.staywright.stock.CurrentRange;

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
    this.opening = opening(bench);
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    return page(asked(uri), List.of());
  }

  /**
   * @param misread what was wrong with a file, in words
   */
  TemplateInstance page(JobQuery asked, List<String> misread) {
    Answer answer = Answer.to(asked, stock.get());
    return Templates.bench(
        bench, answer.query(), answer.form(), answer.view(), answer.ranking(), false, misread);
  }

  /** What changes on the page while its form is filled in. */
  @GET
  @Path("live")
  public RestResponse<TemplateInstance> live(@Context UriInfo uri) {
    Answer answer = Answer.to(asked(uri), stock.get());
    return RestResponse.ResponseBuilder.ok(
            Templates.live(bench, answer.query(), answer.form(), answer.view(), answer.ranking()))
        .header("HX-Replace-Url", answer.query().address())
        .build();
  }

  /** One fit in full, as a page. */
  @GET
  @Path("fit")
  public TemplateInstance fit(@Context UriInfo uri, @QueryParam("pick") String pick) {
    JobQuery query = asked(uri);
    return Templates.fit(bench, query.pairs(), query.address(), assessed(query, pick));
  }

  /** The same for a place in the ranking. */
  @GET
  @Path("fit/detail")
  public TemplateInstance detail(@Context UriInfo uri, @QueryParam("pick") String pick) {
    return Templates.detail(bench, assessed(asked(uri), pick));
  }

  private FitView assessed(JobQuery query, String picked) {
    Job job = JobForm.read(query.tree());
    Pick pick = Pick.read(picked).orElseThrow(NotFoundException::new);
    Part part = stock.get().part(pick.partNumber()).orElseThrow(NotFoundException::new);
    Assessment assessment = Assessment.of(job, stock.get(), part, pick.count());
    if (assessment.fit() == null) {
      throw new NotFoundException();
    }
    return FitView.of(job, assessment.fit(), bench.wording());
  }

  private JobQuery asked(UriInfo uri) {
    JobQuery asked = JobQuery.of(bench, uri.getQueryParameters());
    return asked.isEmpty() ? opening : asked;
  }

  private static JobQuery opening(Bench bench) {
    try (InputStream in = BenchPage.class.getResourceAsStream("/jobs" + bench.path() + ".json")) {
      return JobQuery.of(new ObjectMapper().readTree(in), "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
