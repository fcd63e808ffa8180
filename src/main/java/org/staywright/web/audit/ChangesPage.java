package org.staywright.web.audit;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import org.staywright.database.Audit;
import org.staywright.database.Recorded;
import org.staywright.form.schema.FlatForm;
import org.staywright.unit.Fault;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** Who did what: searched, opened, and the name that this browser gives. */
@Path("/changes")
@Produces(MediaType.TEXT_HTML)
public class ChangesPage {

  private final Audit audit;
  private final Sender sender;

  ChangesPage(Audit audit, Sender sender) {
    this.audit = audit;
    this.sender = sender;
  }

  @GET
  public TemplateInstance list(@Context UriInfo uri) {
    Wording wording = PageText.wording();
    List<Fault> faults = new ArrayList<>();
    JsonNode query =
        ChangesQuery.PAGE.read(
            FlatForm.tree(ChangesQuery.PAGE, ChangesView.known(uri.getQueryParameters())),
            "",
            faults);
    List<Recorded> rows =
        audit.page(ChangesQuery.search(query), ChangesQuery.before(query), ChangesView.SIZE + 1);
    return Templates.changes(
        ChangesView.of(
            uri.getQueryParameters(), rows, faults.stream().map(wording::fault).toList(), wording));
  }

  @GET
  @Path("{id}")
  public TemplateInstance show(@PathParam("id") String id) {
    if (!id.matches("[0-9]{1,18}")) {
      throw new NotFoundException();
    }
    Recorded row = audit.find(Long.parseLong(id)).orElseThrow(NotFoundException::new);
    Wording wording = PageText.wording();
    return Templates.change(ChangeRow.of(row, wording), ChangeView.of(row, wording));
  }

  /** Keeps a name for the forms that ask for none. */
  @POST
  @Path("name")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response name(@FormParam(Sender.BY) @DefaultValue("") String by) {
    sender.typed(by);
    return Response.seeOther(URI.create("/changes")).build();
  }

  @CheckedTemplate(basePath = "audit")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance changes(ChangesView changes);

    static native TemplateInstance change(ChangeRow row, ChangeView change);
  }
}
