package org.staywright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.form.ChoiceForm;
import org.staywright.form.FlatForm;
import org.staywright.form.JobForm;
import org.staywright.form.JsonText;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;

/** The saved jobs, and what to order for each. */
@Path("/jobs")
@Produces(MediaType.TEXT_HTML)
public class JobPages {

  private final Jobs jobs;
  private final Ordering ordering;
  private final CurrentRange stock;

  JobPages(Jobs jobs, Ordering ordering, CurrentRange stock) {
    this.jobs = jobs;
    this.ordering = ordering;
    this.stock = stock;
  }

  @GET
  public TemplateInstance list(@QueryParam("page") @DefaultValue("1") String page) {
    int asked = page.matches("[1-9][0-9]{0,5}") ? Integer.parseInt(page) : 1;
    return Templates.jobs(JobsView.of(jobs, asked, Say.wording()));
  }

  @GET
  @Path("{id}")
  public TemplateInstance show(@PathParam("id") String id) {
    return Templates.job(JobView.of(find(id), ordering, Say.wording()));
  }

  /** Saves a job with its choice, or changes the saved one it came from: all of it or nothing. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> choose(
      @FormParam("pick") String picked, MultivaluedMap<String, String> form) {
    Pick pick = Pick.read(picked).orElseThrow(NotFoundException::new);
    JobQuery query = JobQuery.of(form);
    ObjectNode document = JobForm.withDefaults(query.tree());
    Range range = stock.get();
    return to(
        QuarkusTransaction.requiringNew()
            .call(
                () -> {
                  SavedJob job =
                      query.saved().isEmpty() ? jobs.add(document) : changed(query, document);
                  return jobs.choose(job.id, job.version, range, wish(pick.values()));
                }));
  }

  /** The earlier choice goes: it may not do for the job as it is now. */
  private SavedJob changed(JobQuery query, ObjectNode document) {
    SavedJob job = find(query.saved());
    if (job.choice != null) {
      job = jobs.unchoose(job.id, job.version);
    }
    return jobs.change(job.id, job.version, document, null);
  }

  /** Orders another number of sets or spares. */
  @POST
  @Path("{id}/choice")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> order(
      @PathParam("id") String id,
      @FormParam("version") int version,
      MultivaluedMap<String, String> form) {
    return to(jobs.choose(find(id).id, version, stock.get(), wish(form)));
  }

  private static ChoiceForm wish(Map<String, List<String>> form) {
    Map<String, List<String>> known = JobQuery.known(ChoiceForm.SHAPE, form);
    return ChoiceForm.read(new JsonText(FlatForm.tree(ChoiceForm.SHAPE, known), List.of()));
  }

  @POST
  @Path("{id}/removal")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> remove(@PathParam("id") String id, @FormParam("version") int version) {
    jobs.remove(find(id).id, version);
    return RestResponse.seeOther(URI.create("/jobs"));
  }

  private SavedJob find(String id) {
    if (!id.matches("[0-9]{1,18}")) {
      throw new NotFoundException();
    }
    return jobs.find(Long.parseLong(id)).orElseThrow(NotFoundException::new);
  }

  private static RestResponse<Void> to(SavedJob job) {
    return RestResponse.seeOther(URI.create("/jobs/" + job.id));
  }
}
