package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import org.staywright.form.replace.ReplacementForm;
import org.staywright.form.replace.ReplacementsAnswer;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.JsonBody;
import org.staywright.web.api.request.Query;
import org.staywright.web.replace.Swap;
import org.staywright.web.shell.Preference;
import org.staywright.wording.ReplacementText;
import org.staywright.wording.Wording;

/** What of the range may stand in for an old spring. */
@Path("/api/v1/replacements")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class ReplacementResource {

  private final CurrentRange current;
  private final Clock clock = Clock.systemUTC();

  ReplacementResource(CurrentRange current) {
    this.current = current;
  }

  @POST
  public ReplacementsAnswer replace(byte[] body, UriInfo uri) {
    Query.none(uri);
    Wording wording = Preference.now().metric();
    ReplacementForm form = ReplacementForm.read(JsonBody.read(body));
    Swap swap = Swap.of(current.get(), form, LocalDate.now(clock));
    return ReplacementsAnswer.of(
        swap.answer(),
        swap.gas().orElse(null),
        form.flap(),
        ReplacementText.in(wording)::effect,
        swap.notes(wording));
  }
}
