package org.staywright.web.backup;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Singleton;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.staywright.backup.Backup;
import org.staywright.backup.Restoration;
import org.staywright.database.Author;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.PageText;

/**
 * A backup is downloaded, and one is sent back in two steps: it is checked and shown beside what it
 * would replace, then put in its place by whoever says so. The last file that was sent is kept
 * until then.
 */
@Path("/backup")
@Singleton
@Produces(MediaType.TEXT_HTML)
public class BackupPage {

  private final Backup backup;
  private final Restoration restoration;
  private final Sender sender;
  private String id;
  private java.nio.file.Path file;

  BackupPage(Backup backup, Restoration restoration, Sender sender) {
    this.backup = backup;
    this.restoration = restoration;
    this.sender = sender;
  }

  @GET
  public TemplateInstance show(@QueryParam("restored") String restored) {
    return Templates.backup(null, restored != null, List.of());
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public synchronized TemplateInstance check(@RestForm("file") FileUpload upload)
      throws IOException {
    if (upload == null) {
      return show(null);
    }
    forget();
    file = Files.createTempFile("staywright-restore", ".zip");
    Files.copy(upload.uploadedFile(), file, StandardCopyOption.REPLACE_EXISTING);
    id = UUID.randomUUID().toString();
    return checked();
  }

  private TemplateInstance checked() {
    try {
      BackupView view = BackupView.of(id, restoration.check(file), backup.contents());
      return Templates.backup(view, false, List.of());
    } catch (Refusal refusal) {
      return refused(refusal);
    }
  }

  private static TemplateInstance refused(Refusal refusal) {
    List<String> faults = refusal.faults().stream().map(PageText.wording()::fault).toList();
    return Templates.backup(null, false, faults);
  }

  @POST
  @Path("restore")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public synchronized Object restore(
      @FormParam("id") String asked,
      @FormParam("confirmed") String confirmed,
      @FormParam(Sender.BY) String by)
      throws IOException {
    Author author = sender.typed(by);
    if (file == null || !id.equals(asked)) {
      return Templates.backup(null, false, List.of(PageText.text("backup.forgotten")));
    }
    if (confirmed == null) {
      return checked();
    }
    try {
      restoration.restore(author, file);
    } catch (Refusal refusal) {
      return refused(refusal);
    }
    forget();
    return Response.seeOther(URI.create("/backup?restored=yes")).build();
  }

  @PreDestroy
  synchronized void forget() throws IOException {
    if (file != null) {
      Files.deleteIfExists(file);
      file = null;
    }
  }

  @CheckedTemplate(basePath = "backup")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance backup(BackupView view, boolean done, List<String> faults);
  }
}
