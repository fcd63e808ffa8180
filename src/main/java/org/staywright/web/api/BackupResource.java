package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.staywright.backup.Backup;
import org.staywright.backup.Contents;
import org.staywright.backup.Restoration;
import org.staywright.form.stock.StockShape;
import org.staywright.web.api.request.Query;
import org.staywright.web.api.request.Refuses;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.Download;

/** Everything there is as one file, and back. */
@Path("/api/v1")
@Produces(MediaType.APPLICATION_JSON)
public class BackupResource {

  public static final String ZIP = "application/zip";

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

  private final Backup backup;
  private final Restoration restoration;
  private final Sender sender;

  BackupResource(Backup backup, Restoration restoration, Sender sender) {
    this.backup = backup;
    this.restoration = restoration;
    this.sender = sender;
  }

  /** Written whole before it is sent, so that whatever goes wrong is an answer of its own. */
  @GET
  @Path("backup.zip")
  @Produces(ZIP)
  public Response backup(UriInfo uri) throws IOException {
    Query.none(uri);
    java.nio.file.Path file = Files.createTempFile("staywright-backup", ".zip");
    try {
      Contents written;
      try (OutputStream to = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
        written = backup.write(to);
      }
      String name = "staywright-" + STAMP.format(written.created()) + ".zip";
      InputStream bytes = Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
      return Download.kept(bytes, name);
    } catch (IOException | RuntimeException e) {
      Files.deleteIfExists(file);
      throw e;
    }
  }

  @POST
  @Path("restore")
  @Consumes({ZIP, MediaType.APPLICATION_OCTET_STREAM})
  @Refuses(503)
  public BackupContentsAnswer restoreBackup(
      InputStream body, @HeaderParam(Sender.FROM) String from, UriInfo uri) throws IOException {
    boolean dry = Query.read(StockShape.RESTORE, uri).path("dryRun").booleanValue();
    java.nio.file.Path file = Files.createTempFile("staywright-restore", ".zip");
    try {
      Files.copy(body, file, StandardCopyOption.REPLACE_EXISTING);
      return BackupContentsAnswer.of(
          dry ? restoration.check(file) : restoration.restore(sender.sent(from), file), !dry);
    } finally {
      Files.deleteIfExists(file);
    }
  }
}
