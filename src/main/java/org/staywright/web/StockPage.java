package org.staywright.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestResponse;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.staywright.form.StockColumn;
import org.staywright.stock.ImportOptions;
import org.staywright.stock.Imports;
import org.staywright.stock.Revision;
import org.staywright.stock.Stock;

/** The range itself: a file of stock is tried or taken in, and earlier revisions are restored. */
@Path("/stock")
@Produces(MediaType.TEXT_HTML)
public final class StockPage {

  private final Stock stock;
  private final Imports imports;

  StockPage(Stock stock, Imports imports) {
    this.stock = stock;
    this.imports = imports;
  }

  @GET
  public TemplateInstance show() {
    return page(null);
  }

  /** Tries a file, or takes it in. */
  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public TemplateInstance take(
      @RestForm("file") FileUpload upload,
      @RestForm String mode,
      @RestForm String friction,
      @RestForm String action)
      throws IOException {
    if (upload == null) {
      return page(null);
    }
    ImportOptions options =
        new ImportOptions("update".equals(mode), "difference".equals(friction), Map.of());
    try (InputStream bytes = Files.newInputStream(upload.uploadedFile())) {
      Imports.Kept file = imports.take(bytes, name(upload));
      return page(
          Measured.imported(
              "write".equals(action)
                  ? imports.write(file, options, (done, total) -> true)
                  : imports.check(file, options, (done, total) -> true)));
    }
  }

  static String name(FileUpload upload) {
    String name = upload.fileName() == null ? "" : upload.fileName().replaceAll("\\p{Cntrl}", "");
    return name.isBlank() ? "import" : name.substring(0, Math.min(200, name.length()));
  }

  @POST
  @Path("restore")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public RestResponse<Void> restore(@FormParam("revision") String revision) {
    stock.revisions().stream()
        .map(Revision::number)
        .filter(number -> number.toString().equals(revision))
        .findFirst()
        .ifPresent(number -> stock.restore(number, "revision " + number));
    return RestResponse.seeOther(URI.create("/stock"));
  }

  private TemplateInstance page(Imports.Outcome outcome) {
    List<Revision> revisions = stock.revisions();
    return Templates.stock(StockView.of(outcome), StockView.revisions(revisions), StockColumn.ALL);
  }
}
