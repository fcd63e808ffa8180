package org.staywright.web.job;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.database.Author;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.Stale;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.History;
import org.staywright.web.audit.Sender;
import org.staywright.web.field.Typed;
import org.staywright.web.shell.Copy;
import org.staywright.web.shell.PageText;
import org.staywright.web.shell.Pages;

/** The saved jobs, and what to order for each. */
@Path("/jobs")
@Produces(MediaType.TEXT_HTML)
public class JobPages {

  private final Jobs jobs;
  private final Ordering ordering;
  private final CurrentRange stock;
  private final Sender sender;
  private final History history;

  JobPages(Jobs jobs, Ordering ordering, CurrentRange stock, Sender sender, History history) {
    this.jobs = jobs;
    this.ordering = ordering;
    this.stock = stock;
    this.sender = sender;
    this.history = history;
  }

  @GET
  public TemplateInstance list(
      @QueryParam("page") @DefaultValue("1") String page, @QueryParam("job") List<String> ticked) {
    Set<Long> ids =
        ticked.stream()
            .filter(id -> id.matches("[0-9]{1,18}"))
            .map(Long::valueOf)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    return Templates.jobs(JobsView.of(jobs, Pages.asked(page), ids, PageText.wording()));
  }

  @GET
  @Path("{id}")
  public TemplateInstance show(@PathParam("id") String id) {
    return page(find(id), Map.of(), List.of(), false);
  }

  /** Orders another number of sets or spares. */
  @POST
  @Path("{id}/choice")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<TemplateInstance> order(
      @PathParam("id") String id,
      @FormParam("version") @DefaultValue("-1") int version,
      @FormParam(Sender.BY) String by,
      MultivaluedMap<String, String> form) {
    SavedJob job = find(id);
    Author author = sender.typed(by);
    Map<String, List<String>> typed = Typed.of(ChoiceForm.SHAPE, form, PageText.wording()).values();
    try {
      ChoiceForm wish =
          ChoiceForm.read(new JsonText(FlatForm.typed(ChoiceForm.SHAPE, typed), List.of()));
      jobs.choose(author, job.id, version, stock.get(), wish);
      return RestResponse.seeOther(URI.create("/jobs/" + job.id));
    } catch (Refusal refusal) {
      return answer(422, page(job, typed, refusal.faults(), false));
    } catch (Stale stale) {
      return answer(409, page(job, typed, List.of(), true));
    }
  }

  /** The same job once more, with its choice as it was frozen. */
  @POST
  @Path("{id}/copy")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> copy(@PathParam("id") String id, @FormParam(Sender.BY) String by) {
    SavedJob job = find(id);
    Author author = sender.typed(by);
    SavedJob copy =
        QuarkusTransaction.requiringNew().call(() -> Copy.of(author, job, jobs, ordering));
    return RestResponse.seeOther(URI.create("/jobs/" + copy.id));
  }

  /** Asks before a job is removed. */
  @GET
  @Path("{id}/removal")
  public TemplateInstance asking(@PathParam("id") String id) {
    return Templates.removal(JobsView.Row.of(find(id), PageText.wording()), false);
  }

  @POST
  @Path("{id}/removal")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<TemplateInstance> remove(
      @PathParam("id") String id,
      @FormParam("version") @DefaultValue("-1") int version,
      @FormParam(Sender.BY) String by) {
    SavedJob job = find(id);
    Author author = sender.typed(by);
    try {
      jobs.remove(author, job.id, version);
      return RestResponse.seeOther(URI.create("/jobs"));
    } catch (Stale stale) {
      return answer(409, Templates.removal(JobsView.Row.of(find(id), PageText.wording()), true));
    }
  }

  private TemplateInstance page(
      SavedJob job, Map<String, List<String>> typed, List<Fault> faults, boolean stale) {
    return Templates.job(
        JobView.of(job, ordering, history.of(job), typed, faults, stale, PageText.wording()));
  }

  private static RestResponse<TemplateInstance> answer(int status, TemplateInstance page) {
    return RestResponse.ResponseBuilder.<TemplateInstance>create(status).entity(page).build();
  }

  private SavedJob find(String id) {
    if (!id.matches("[0-9]{1,18}")) {
      throw new NotFoundException();
    }
    return jobs.find(Long.parseLong(id)).orElseThrow(NotFoundException::new);
  }

  @CheckedTemplate(basePath = "job")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance jobs(JobsView jobs);

    static native TemplateInstance job(JobView job);

    static native TemplateInstance removal(JobsView.Row job, boolean stale);
  }
}
