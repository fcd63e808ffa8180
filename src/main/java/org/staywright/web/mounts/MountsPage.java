package org.staywright.web.mounts;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
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
import org.staywright.fit.mounts.MountSearch;
import org.staywright.form.mounts.MountsRequest;
import org.staywright.form.schema.JsonText;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.mechanism.Mounts;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.web.chart.Scene;
import org.staywright.web.field.FormFields;
import org.staywright.web.query.Bench;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.ZonesQuery;

/**
 * Mounts looked for in zones. The address of the answer holds the whole question: it starts the
 * search, or finds it running, and comes again by itself until there is an answer. One that was
 * stopped keeps what it had found.
 */
@Path("/mounts")
@Produces(MediaType.TEXT_HTML)
public final class MountsPage {

  private static final long SEED = 1;
  private static final String STOPPED = "stopped";

  private final CurrentRange stock;
  private final Tasks tasks;

  MountsPage(CurrentRange stock, Tasks tasks) {
    this.stock = stock;
    this.tasks = tasks;
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    JobQuery asked = JobQuery.of(uri.getQueryParameters());
    JobQuery query = ZonesQuery.filled(asked.isEmpty() ? Bench.FLAP.opening() : asked, stock.get());
    return page(query, List.of(), MountsView.unasked());
  }

  /** The drawing alone, while its zones are being changed. */
  @GET
  @Path("step")
  public TemplateInstance step(@Context UriInfo uri) {
    return Scene.Templates.scene(scene(JobQuery.of(uri.getQueryParameters()), List.of()));
  }

  @GET
  @Path("found")
  public TemplateInstance found(@Context UriInfo uri, @QueryParam(STOPPED) boolean stopped) {
    JobQuery query = JobQuery.of(uri.getQueryParameters());
    Range range = stock.get();
    MountsRequest asked;
    try {
      asked = read(query);
    } catch (Refusal refusal) {
      return page(query, refusal.faults(), MountsView.unasked());
    }
    try {
      Task task = task(range, asked, stopped);
      return page(
          query,
          List.of(),
          task.result() == null
              ? MountsView.of(task, again(query, stopped))
              : MountsView.of(task, query, asked.job()));
    } catch (Tasks.Busy busy) {
      return page(query, List.of(), MountsView.busy());
    }
  }

  /** One that was stopped is begun anew, unless what it had found is asked for. */
  private Task task(Range range, MountsRequest asked, boolean stopped) {
    String id = id(range, asked);
    tasks
        .find(id)
        .filter(known -> known.state() == Task.State.STOPPED && !stopped)
        .ifPresent(known -> tasks.forget(id));
    return tasks.start(
        id, progress -> MountSearch.of(range, asked.job(), asked.zones(), SEED, progress));
  }

  private static String again(JobQuery query, boolean stopped) {
    String found = ZonesQuery.address("/mounts/found", query);
    return stopped ? found + "&" + STOPPED + "=true" : found;
  }

  /** Stops the search; what it has found until then is its answer. */
  @POST
  @Path("stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> stop(MultivaluedMap<String, String> form) {
    JobQuery query = JobQuery.of(form);
    try {
      tasks.stop(id(stock.get(), read(query)));
    } catch (Refusal nothingToStop) {
      // The question is shown again, with what is wrong with it.
    }
    return RestResponse.seeOther(URI.create(again(query, true)));
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
        query.bench(),
        form,
        ZonesQuery.pairs(rest),
        query.pairs(),
        query.address(),
        scene(query, view.mounts()),
        view);
  }

  /** Null while the zones are not sound. */
  private static Scene scene(JobQuery query, List<Mounts> found) {
    try {
      MountsRequest asked = read(query);
      return Scene.of(asked.job(), asked.zones(), found, query.bench().wording());
    } catch (Refusal unsound) {
      return null;
    }
  }

  @CheckedTemplate(basePath = "mounts")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance mounts(
        Bench bench,
        FormFields form,
        List<JobQuery.Pair> rest,
        List<JobQuery.Pair> all,
        String back,
        Scene scene,
        MountsView found);
  }
}
