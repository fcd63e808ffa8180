package org.staywright.web.api.request;

import jakarta.ws.rs.ClientErrorException;
import jakarta.ws.rs.NotSupportedException;
import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.staywright.form.schema.JsonText;

/** What was sent: JSON, and not much of it. */
public final class JsonBody {

  /** A job is a few kilobytes; nobody needs more. */
  private static final int MOST = 1 << 20;

  private static final Set<String> WITH_BODY = Set.of("POST", "PUT");

  /**
   * A page of another site can send a body without a type, unasked; one with this type it cannot.
   */
  @ServerRequestFilter
  public void refuseWithoutType(ContainerRequestContext request) {
    boolean ours = request.getUriInfo().getPath().startsWith("/api");
    if (ours && WITH_BODY.contains(request.getMethod()) && request.getMediaType() == null) {
      throw new NotSupportedException();
    }
  }

  public static JsonText read(byte[] body) {
    if (body.length > MOST) {
      throw new ClientErrorException(413);
    }
    return JsonText.read(body);
  }
}
