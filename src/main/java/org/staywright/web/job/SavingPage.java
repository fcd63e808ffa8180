package org.staywright.web.job;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URI;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestResponse;
import org.staywright.database.Author;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.Stale;
import org.staywright.job.order.Choice;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.Sender;
import org.staywright.web.bench.BenchPage;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.Pick;
import org.staywright.web.shell.PageText;
import org.staywright.web.shell.SeenVersion;
import org.staywright.wording.Wording;

/** Saves a job as it was typed, with a part chosen for it or without: all of it or nothing. */
@Path("/jobs")
@Produces(MediaType.TEXT_HTML)
public class SavingPage {

  private final Jobs jobs;
  private final Ordering ordering;
  private final CurrentRange stock;
  private final Sender sender;

  SavingPage(Jobs jobs, Ordering ordering, CurrentRange stock, Sender sender) {
    this.jobs = jobs;
    this.ordering = ordering;
    this.stock = stock;
    this.sender = sender;
  }

  /**
   * @param picked part and count, null for a job alone
   * @param dropping "true" where an earlier choice may go
   * @param even "true" where the part is wanted although it does not fit
   * @param by who saves it, null where the form does not ask
   */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<TemplateInstance> save(
      @FormParam("pick") String picked,
      @FormParam("drop") String dropping,
      @FormParam("even") String even,
      @FormParam(Sender.BY) String by,
      MultivaluedMap<String, String> form) {
    JobQuery query = JobQuery.of(form);
    Pick pick =
        picked == null || picked.isEmpty()
            ? null
            : Pick.read("true".equals(even) ? picked + "!" : picked)
                .orElseThrow(NotFoundException::new);
    ObjectNode document;
    try {
      document = JobForm.withDefaults(query.tree());
      JobForm.read(document, stock.get());
    } catch (Refusal refusal) {
      return answer(422, BenchPage.page(query, stock.get(), List.of()));
    }
    SeenVersion seen = SeenVersion.read(query.saved()).orElse(null);
    Range range = stock.get();
    boolean drop = "true".equals(dropping);
    Author author = sender.typed(by);
    try {
      SavedJob job =
          QuarkusTransaction.requiringNew()
              .call(() -> saved(author, seen, document, pick, drop, range));
      return RestResponse.seeOther(URI.create("/jobs/" + job.id));
    } catch (Stale stale) {
      SavedJob now = jobs.find(seen.id()).orElse(null);
      String kept = pick == null ? "" : pick.toString();
      return conflict(now == null ? "gone" : "stale", "", query, kept, now);
    } catch (Refusal refusal) {
      if (pick != null) {
        return RestResponse.seeOther(URI.create(query.address(pick)));
      }
      Wording wording = PageText.wording();
      String reason =
          refusal.faults().stream().map(fault -> fault.bound()).collect(Collectors.joining(", "));
      return conflict("choice", reason, query, "", jobs.find(seen.id()).orElse(null));
    }
  }

  private SavedJob saved(
      Author author,
      SeenVersion seen,
      ObjectNode document,
      Pick pick,
      boolean drop,
      Range current) {
    if (seen == null) {
      SavedJob job = jobs.add(author, document);
      return pick == null ? job : choose(author, job, pick, null, current);
    }
    Choice earlier = jobs.find(seen.id()).map(job -> job.choice).orElse(null);
    int version = seen.version();
    if (earlier != null && (pick != null || drop)) {
      // The earlier choice goes first: it may not do for the job as it is now.
      version = jobs.unchoose(author, seen.id(), version).version;
      earlier = pick == null ? null : earlier;
    }
    boolean kept = earlier != null && pick == null;
    Range range = kept ? ordering.range(earlier.revision()) : null;
    SavedJob job = jobs.change(author, seen.id(), version, document, range);
    return pick == null ? job : choose(author, job, pick, earlier, current);
  }

  /** Sets, spares and brackets stay as they were ordered before. */
  private SavedJob choose(Author author, SavedJob job, Pick pick, Choice earlier, Range current) {
    Map<String, List<String>> wish = new HashMap<>(pick.values());
    if (earlier != null) {
      wish.put("sets", List.of(earlier.sets().toString()));
      wish.put("spares", List.of(earlier.spares().toString()));
      wish.put("brackets", List.of(earlier.brackets().toString()));
    }
    ObjectNode tree = FlatForm.tree(ChoiceForm.SHAPE, wish);
    return jobs.choose(
        author, job.id, job.version, current, ChoiceForm.read(new JsonText(tree, List.of())));
  }

  private static RestResponse<TemplateInstance> conflict(
      String kind, String reason, JobQuery typed, String pick, SavedJob now) {
    return answer(
        409,
        Templates.conflict(Conflict.of(kind, reason, typed, pick, now, typed.bench().wording())));
  }

  private static RestResponse<TemplateInstance> answer(int status, TemplateInstance page) {
    return RestResponse.ResponseBuilder.<TemplateInstance>create(status).entity(page).build();
  }

  @CheckedTemplate(basePath = "job")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance conflict(Conflict conflict);
  }
}
