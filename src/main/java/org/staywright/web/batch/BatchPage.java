package org.staywright.web.batch;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.staywright.database.Author;
import org.staywright.form.job.JobFile;
import org.staywright.form.schema.Unreadable;
import org.staywright.job.batch.Batch;
import org.staywright.job.batch.Batches;
import org.staywright.stock.CurrentRange;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.PageText;
import org.staywright.web.stock.StockPage;
import org.staywright.web.stock.StockView;
import org.staywright.wording.Wording;

/** A file of many jobs is sent, and what comes of each is seen as it comes. */
@Path("/batches")
@Produces(MediaType.TEXT_HTML)
public final class BatchPage {

  private final Batches batches;
  private final CurrentRange current;
  private final Sender sender;

  BatchPage(Batches batches, CurrentRange current, Sender sender) {
    this.batches = batches;
    this.current = current;
    this.sender = sender;
  }

  @GET
  public TemplateInstance list() {
    return list("", List.of());
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Object begin(@RestForm("file") FileUpload upload, @RestForm(Sender.BY) String by)
      throws IOException {
    if (upload == null || upload.size() == 0) {
      return list("", List.of());
    }
    Author author = sender.typed(by);
    Wording wording = PageText.wording();
    byte[] body = Files.readAllBytes(upload.uploadedFile());
    JobFile file;
    try {
      file =
          startsJson(body)
              ? JobFile.json(body, current.get())
              : JobFile.table(new ByteArrayInputStream(body), current.get());
    } catch (Unreadable unreadable) {
      String line = Integer.toString(unreadable.line());
      String column = Integer.toString(unreadable.column());
      return list(wording.text("problem.not-json", line, column), List.of());
    }
    if (file.faultCount() > 0) {
      return list(
          wording.text("batch.faulty", file.faultCount()),
          file.faults().stream().map(fault -> StockView.row(fault, wording)).toList());
    }
    Batch batch = batches.begin(author, StockPage.name(upload), file.rows());
    return Response.seeOther(URI.create("/batches/" + batch.id())).build();
  }

  /** A list of jobs or one job, and not a table. */
  private static boolean startsJson(byte[] body) {
    int first = 0;
    while (first < body.length && Character.isWhitespace(body[first])) {
      first++;
    }
    return first < body.length && (body[first] == '[' || body[first] == '{');
  }

  @GET
  @Path("{id}")
  public TemplateInstance show(@PathParam("id") String id) {
    Batch batch = batches.find(id).orElseThrow(NotFoundException::new);
    return Templates.batch(BatchView.of(batch), BatchView.rows(batches, id));
  }

  /** Stops it; removes it where it is over. */
  @POST
  @Path("{id}/stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response stop(@PathParam("id") String id, @FormParam(Sender.BY) String by) {
    if (batches.find(id).isEmpty()) {
      throw new NotFoundException();
    }
    batches.stop(sender.typed(by), id);
    String next = batches.find(id).isPresent() ? "/batches/" + id : "/batches";
    return Response.seeOther(URI.create(next)).build();
  }

  private TemplateInstance list(String fault, List<StockView.Row> faults) {
    return Templates.batches(batches.all().stream().map(BatchView::of).toList(), fault, faults);
  }

  @CheckedTemplate(basePath = "batch")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance batches(
        List<BatchView> batches, String fault, List<StockView.Row> faults);

    static native TemplateInstance batch(BatchView batch, List<BatchView.Row> rows);
  }
}
