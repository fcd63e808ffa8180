package org.staywright.web.stock;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.staywright.database.Author;
import org.staywright.stock.Revision;
import org.staywright.stock.Stock;
import org.staywright.stock.intake.Inbox;
import org.staywright.web.audit.History;
import org.staywright.web.audit.Sender;

/** The range itself: a file of stock comes in, and earlier revisions are restored. */
@Path("/stock")
@Produces(MediaType.TEXT_HTML)
public final class StockPage {

  private final Stock stock;
  private final Inbox inbox;
  private final Sender sender;
  private final History history;

  StockPage(Stock stock, Inbox inbox, Sender sender, History history) {
    this.stock = stock;
    this.inbox = inbox;
    this.sender = sender;
    this.history = history;
  }

  @GET
  public TemplateInstance show() {
    return Templates.stock(StockView.revisions(stock.revisions(), history));
  }

  /** Takes a file in; its own page tries it. */
  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response take(
      @RestForm("file") FileUpload upload, @RestForm String mode, @RestForm String friction)
      throws IOException {
    if (upload == null) {
      return Response.seeOther(URI.create("/stock")).build();
    }
    try (InputStream bytes = Files.newInputStream(upload.uploadedFile())) {
      Inbox.Kept file = inbox.take(bytes, name(upload));
      String address = new ImportPlan(file.id(), mode, friction, "").address("");
      return Response.seeOther(URI.create(address)).build();
    }
  }

  /** Every column that a file may have. */
  @GET
  @Path("columns")
  public TemplateInstance columns() {
    return Templates.columns(ColumnRow.all());
  }

  /** What differs between a revision and an earlier or later one. */
  @GET
  @Path("revisions/{n}")
  public TemplateInstance revision(
      @PathParam("n") String n,
      @QueryParam("since") String since,
      @QueryParam("page") String page) {
    List<Revision> revisions = stock.revisions();
    int to = known(revisions, n);
    int from = since == null ? Math.max(1, to - 1) : known(revisions, since);
    int at = page != null && page.matches("[1-9]\\d{0,5}") ? Integer.parseInt(page) : 1;
    int skipped = (at - 1) * RevisionView.SIZE;
    return Templates.revision(
        RevisionView.of(
            revisions, history, stock.difference(from, to, skipped, RevisionView.SIZE), at));
  }

  private static int known(List<Revision> revisions, String n) {
    return revisions.stream()
        .map(Revision::number)
        .filter(number -> number.toString().equals(n))
        .findFirst()
        .orElseThrow(NotFoundException::new);
  }

  public static String name(FileUpload upload) {
    String name = upload.fileName() == null ? "" : upload.fileName().replaceAll("\\p{Cntrl}", "");
    return name.isBlank() ? "import" : name.substring(0, Math.min(200, name.length()));
  }

  @POST
  @Path("restore")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> restore(
      @FormParam("revision") String revision, @FormParam(Sender.BY) String by) {
    Author author = sender.typed(by);
    stock.revisions().stream()
        .map(Revision::number)
        .filter(number -> number.toString().equals(revision))
        .findFirst()
        .ifPresent(number -> stock.restore(author, number, "revision " + number));
    return RestResponse.seeOther(URI.create("/stock"));
  }

  @CheckedTemplate(basePath = "stock")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance stock(List<StockView.RevisionRow> revisions);

    static native TemplateInstance columns(List<ColumnRow> columns);

    static native TemplateInstance revision(RevisionView view);
  }
}
