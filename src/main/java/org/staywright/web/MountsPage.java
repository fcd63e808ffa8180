package org.staywright.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.fit.Found;
import org.staywright.fit.MountSearch;
import org.staywright.form.JsonText;
import org.staywright.form.MountsRequest;
import org.staywright.job.Task;
import org.staywright.job.Tasks;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;

/**
 * Mounts looked for in zones. The address of the answer holds the whole question: it starts the
 * search, or finds it running, and comes again by itself until there is an answer.
 */
@Path("/mounts")
@Produces(MediaType.TEXT_HTML)
public final class MountsPage {

  private static final long SEED = 1;

  private final CurrentRange stock;
  private final Tasks tasks;

  MountsPage(CurrentRange stock, Tasks tasks) {
    this.stock = stock;
    this.tasks = tasks;
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    JobQuery query = ZonesQuery.filled(JobQuery.of(uri.getQueryParameters()));
    return page(query, List.of(), MountsView.unasked());
  }

  @GET
  @Path("found")
  public TemplateInstance found(@Context UriInfo uri) {
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    Range range = stock.get();
    MountsRequest asked;
    try {
      asked = read(query);
    } catch (Refusal refusal) {
      return page(query, refusal.faults(), MountsView.unasked());
    }
    try {
      Task task =
          tasks.start(
              id(range, asked),
              progress -> MountSearch.of(range, asked.job(), asked.zones(), SEED, progress));
      return page(
          query,
          List.of(),
          task.state() == Task.State.DONE
              ? MountsView.of(query, asked.job(), (Found) task.result(), query.bench().wording())
              : MountsView.waiting(task));
    } catch (Tasks.Busy busy) {
      return page(query, List.of(), MountsView.busy());
    }
  }

  /** Stops the search and goes back to its question. */
  @POST
  @Path("stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> stop(MultivaluedMap<String, String> form) {
    JobQuery query = JobQuery.of(form);
    try {
      tasks.forget(id(stock.get(), read(query)));
    } catch (Refusal nothingToStop) {
      // The question is shown again, with what is wrong with it.
    }
    return RestResponse.seeOther(URI.create(ZonesQuery.address("/mounts", query)));
  }

  private static MountsRequest read(JobQuery query) {
    return MountsRequest.read(new JsonText(query.tree(), List.of()));
  }

  /** The same question about the same stock has one answer. */
  private static String id(Range range, MountsRequest asked) {
    String question = range.revision() + " " + asked.document();
    return UUID.nameUUIDFromBytes(question.getBytes(StandardCharsets.UTF_8)).toString();
  }

  private TemplateInstance page(JobQuery query, List<Fault> faults, MountsView view) {
    FormFields form =
        new FormFields(query.bench().wording(), query.bench().shape(), query.values(), faults);
    Map<String, List<String>> rest = ZonesQuery.without(query);
    return Templates.mounts(
        query.bench(), form, ZonesQuery.pairs(rest), query.pairs(), query.address(), view);
  }
}
