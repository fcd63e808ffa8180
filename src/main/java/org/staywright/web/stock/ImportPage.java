package org.staywright.web.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import org.staywright.database.Author;
import org.staywright.job.task.Task;
import org.staywright.job.task.Tasks;
import org.staywright.stock.Stock;
import org.staywright.stock.intake.Imports;
import org.staywright.stock.intake.Inbox;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.ProgramMetrics;

/**
 * A file of stock that came in: what its columns mean, its first rows as understood, its faults,
 * and then its taking in by the same plan. The address holds the plan; it starts the check, or
 * finds it running, and comes again by itself until that is over.
 */
@Path("/stock/imports/{id}")
@Produces(MediaType.TEXT_HTML)
public final class ImportPage {

  /** A short file is answered at once. */
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private static final String WRITING = "write";
  private static final String WRITTEN = "/written";

  private final Inbox inbox;
  private final Imports imports;
  private final Stock stock;
  private final Tasks tasks;
  private final Sender sender;

  ImportPage(Inbox inbox, Imports imports, Stock stock, Tasks tasks, Sender sender) {
    this.inbox = inbox;
    this.imports = imports;
    this.stock = stock;
    this.tasks = tasks;
    this.sender = sender;
  }

  @GET
  public TemplateInstance check(@PathParam("id") String id, @Context UriInfo uri) {
    Inbox.Kept file = find(id);
    ImportPlan plan = ImportPlan.of(id, uri.getQueryParameters());
    try {
      Task task =
          tasks.start(
              plan.task(checking()),
              progress ->
                  ProgramMetrics.imported(imports.check(file, plan.options(), progress::goOn)));
      task.await(PATIENCE);
      return Templates.taken(ImportView.of(file, plan, task));
    } catch (Tasks.Busy busy) {
      return Templates.taken(ImportView.said(file, plan, "stock.busy"));
    }
  }

  /** What a check found holds for one revision of the range. */
  private String checking() {
    return "check against " + stock.newest();
  }

  /** Other meanings of the columns, another way to take the file. */
  @POST
  @Path("plan")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response plan(@PathParam("id") String id, MultivaluedMap<String, String> form)
      throws IOException {
    Inbox.Kept file = find(id);
    List<String> header = file.file() == null ? List.of() : file.file().header();
    return seeOther(ImportPlan.of(id, form).with(header, form).address(""));
  }

  /** Takes the file in as it was shown; shows it anew where the range is another by now. */
  @POST
  @Path("write")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response write(@PathParam("id") String id, MultivaluedMap<String, String> form) {
    Inbox.Kept file = find(id);
    ImportPlan plan = ImportPlan.of(id, form);
    Author author = sender.typed(form.getFirst(Sender.BY));
    if (!Integer.toString(stock.newest()).equals(form.getFirst("base"))) {
      return seeOther(plan.address(""));
    }
    try {
      tasks.start(
          plan.task(WRITING),
          progress ->
              ProgramMetrics.imported(imports.write(author, file, plan.options(), progress::goOn)));
      return seeOther(plan.address(WRITTEN));
    } catch (Tasks.Busy busy) {
      TemplateInstance said = Templates.taken(ImportView.said(file, plan, "stock.busy"));
      return Response.status(Response.Status.SERVICE_UNAVAILABLE).entity(said).build();
    }
  }

  @GET
  @Path("written")
  public Object written(@PathParam("id") String id, @Context UriInfo uri) {
    ImportPlan plan = ImportPlan.of(id, uri.getQueryParameters());
    Task task = tasks.find(plan.task(WRITING)).orElse(null);
    if (task == null) {
      return seeOther(plan.address(""));
    }
    task.await(PATIENCE);
    return Templates.taken(ImportView.of(find(id), plan, task));
  }

  /** Stops whatever is done with the file; nothing of it stays. */
  @POST
  @Path("stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response stop(@PathParam("id") String id, MultivaluedMap<String, String> form) {
    ImportPlan plan = ImportPlan.of(id, form);
    tasks.forget(plan.task(checking()));
    tasks.forget(plan.task(WRITING));
    return seeOther("/stock");
  }

  private Inbox.Kept find(String id) {
    return inbox.find(id).orElseThrow(NotFoundException::new);
  }

  private static Response seeOther(String address) {
    return Response.seeOther(URI.create(address)).build();
  }

  @CheckedTemplate(basePath = "stock")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance taken(ImportView taken);
  }
}
