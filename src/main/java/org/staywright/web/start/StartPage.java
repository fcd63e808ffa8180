package org.staywright.web.start;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.staywright.job.Jobs;
import org.staywright.web.job.JobsView;
import org.staywright.web.shell.PageText;

/** Three doors, for who designs, who buys and who fits; behind the first, ways to start. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
public final class StartPage {

  private static final int SHOWN = 12;

  private final Jobs jobs;

  StartPage(Jobs jobs) {
    this.jobs = jobs;
  }

  @GET
  public TemplateInstance show() {
    return Templates.start(List.of(Way.values()), JobsView.some(jobs, SHOWN, PageText.wording()));
  }

  @CheckedTemplate(basePath = "start")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance start(List<Way> ways, List<JobsView.Row> jobs);
  }
}
