package org.staywright.web.api;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponseSchema;
import org.staywright.fit.mounts.Found;
import org.staywright.fit.mounts.MountSearch;
import org.staywright.fit.mounts.Progress;
import org.staywright.form.mounts.FoundAnswer;
import org.staywright.form.mounts.MountsRequest;
import org.staywright.job.task.Tasks;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.web.api.request.JsonBody;
import org.staywright.web.api.request.Prefer;
import org.staywright.web.api.request.Query;
import org.staywright.web.shell.Preference;
import org.staywright.wording.FitText;
import org.staywright.wording.Wording;

/** Mounts and stock part found together. */
@Path("/api/v1/mounts")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class MountsResource {

  /** The same question gets the same answer. */
  private static final long SEED = 1;

  private final CurrentRange current;
  private final Tasks tasks;

  MountsResource(CurrentRange current, Tasks tasks) {
    this.current = current;
    this.tasks = tasks;
  }

  @POST
  @APIResponseSchema(value = FoundAnswer.class, responseCode = "200")
  public Response findMounts(byte[] body, @HeaderParam(Prefer.HEADER) String prefer, UriInfo uri) {
    Query.none(uri);
    MountsRequest asked = MountsRequest.read(JsonBody.read(body));
    Range range = current.get();
    return Prefer.async(prefer)
        ? TaskResource.begun(tasks, progress -> found(asked, range, progress), uri)
        : Response.ok(found(asked, range, Progress.UNSEEN)).build();
  }

  private static FoundAnswer found(MountsRequest asked, Range range, Progress progress) {
    Found found = MountSearch.of(range, asked.job(), asked.zones(), SEED, progress);
    Wording wording = Preference.now().metric().about(asked.job().mechanism().code());
    String message =
        found.obstacle() == null ? null : FitText.in(wording).obstacle(found.obstacle());
    return FoundAnswer.of(asked.job(), found, FitResource::cautions, message);
  }
}
