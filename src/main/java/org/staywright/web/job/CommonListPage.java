package org.staywright.web.job;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.staywright.document.job.OrderFile;
import org.staywright.job.Chosen;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.web.audit.History;
import org.staywright.web.field.Labelled;
import org.staywright.web.shell.Address;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** One parts list for the jobs that an address names, as a page and as files. */
@Path("/parts-list")
public class CommonListPage {

  private final Jobs jobs;
  private final Ordering ordering;
  private final History history;

  CommonListPage(Jobs jobs, Ordering ordering, History history) {
    this.jobs = jobs;
    this.ordering = ordering;
    this.history = history;
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public TemplateInstance show(@QueryParam("job") List<String> ids) {
    Wording wording = PageText.wording();
    Ticked ticked = Ticked.of(ids, jobs, wording);
    List<Chosen> chosen = ordering.chosen(ticked.jobs());
    String query = new Address("", Map.of("job", ticked.ids())).toString();
    return Templates.list(
        new CommonView(
            ticked.jobs().stream().map(job -> JobsView.Row.of(job, wording)).toList(),
            ticked.missing(),
            FileLink.of(OrderFile.OF_SEVERAL, "/parts-list/", query, wording),
            ticked.jobs().stream()
                .map(job -> new Labelled(JobsView.title(job, wording), history.of(job).choice()))
                .filter(choice -> !choice.value().isEmpty())
                .toList(),
            chosen.isEmpty() ? null : ListView.of(chosen, ordering.list(chosen), wording)));
  }

  /** The same list as a file. */
  @GET
  @Path("{file}")
  public Response file(@PathParam("file") String file, @QueryParam("job") List<String> ids) {
    Wording wording = PageText.wording();
    Ticked ticked = Ticked.of(ids, jobs, wording);
    if (ticked.jobs().isEmpty() || !ticked.missing().isEmpty()) {
      throw new NotFoundException();
    }
    OrderFile wanted =
        OrderFile.OF_SEVERAL.stream()
            .filter(each -> each.file().equals(file))
            .findFirst()
            .orElseThrow(NotFoundException::new);
    List<Chosen> chosen = ordering.chosen(ticked.jobs());
    return Download.of(wanted, wanted.of(chosen, ordering.list(chosen), wording), file);
  }

  @CheckedTemplate(basePath = "job")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance list(CommonView common);
  }
}
