package org.staywright.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.fit.Assessment;
import org.staywright.fit.Job;
import org.staywright.form.JobForm;
import org.staywright.part.Part;
import org.staywright.stock.CurrentRange;
import org.staywright.wording.Wording;

/** A flap described in a form, and the stock ranked for it: one address holds the whole job. */
@Path("/flap")
@Produces(MediaType.TEXT_HTML)
public final class FlapPage {

  /** What the form opens with: nobody starts from empty fields. */
  private static final JobQuery OPENING = opening();

  private final CurrentRange stock;

  FlapPage(CurrentRange stock) {
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    Answer answer = answer(uri);
    return Templates.flap(
        answer.form(), answer.query().saved(), answer.view(), answer.ranking(), false);
  }

  /** What changes on the page while its form is filled in. */
  @GET
  @Path("live")
  public RestResponse<TemplateInstance> live(@Context UriInfo uri) {
    Answer answer = answer(uri);
    return RestResponse.ResponseBuilder.ok(
            Templates.live(answer.form(), answer.view(), answer.ranking()))
        .header("HX-Replace-Url", answer.query().address())
        .build();
  }

  /** One fit in full, as a page. */
  @GET
  @Path("fit")
  public TemplateInstance fit(@Context UriInfo uri, @QueryParam("pick") String pick) {
    JobQuery query = asked(uri);
    return Templates.fit(query.pairs(), query.address(), assessed(query, pick));
  }

  /** The same for a place in the ranking. */
  @GET
  @Path("fit/detail")
  public TemplateInstance detail(@Context UriInfo uri, @QueryParam("pick") String pick) {
    return Templates.detail(assessed(asked(uri), pick));
  }

  private FitView assessed(JobQuery query, String picked) {
    Wording wording = Say.wording();
    Job job = JobForm.read(query.tree());
    Pick pick = Pick.read(picked).orElseThrow(NotFoundException::new);
    Part part = stock.get().part(pick.partNumber()).orElseThrow(NotFoundException::new);
    Assessment assessment = Assessment.of(job, stock.get(), part, pick.count());
    if (assessment.fit() == null) {
      throw new NotFoundException();
    }
    return FitView.of(job, assessment.fit(), wording);
  }

  private Answer answer(UriInfo uri) {
    return Answer.to(asked(uri), stock.get(), Say.wording());
  }

  private static JobQuery asked(UriInfo uri) {
    JobQuery asked = JobQuery.of(uri.getQueryParameters());
    return asked.isEmpty() ? OPENING : asked;
  }

  private static JobQuery opening() {
    try (InputStream in = FlapPage.class.getResourceAsStream("/jobs/opening.json")) {
      return JobQuery.of(new ObjectMapper().readTree(in), "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
