package org.staywright.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.staywright.wording.Wording;

/** Gives an error the look of a page, wherever a page was asked for. */
public final class ErrorPages {

  @ServerResponseFilter
  void dress(ContainerRequestContext request, ContainerResponseContext response) {
    int status = response.getStatus();
    String path = request.getUriInfo().getPath();
    boolean page = !path.startsWith("/api/") && !path.startsWith("/q/");
    boolean dressed = response.getEntity() instanceof TemplateInstance;
    if (status >= 400 && page && !dressed) {
      response.setEntity(page(status).render(), null, MediaType.TEXT_HTML_TYPE);
    }
  }

  private static TemplateInstance page(int status) {
    Wording wording = Say.wording();
    String key = "page.error." + known(status);
    return Templates.error(status, wording.text(key), wording.text(key + ".advice"));
  }

  private static int known(int status) {
    return switch (status) {
      case 404, 422, 503 -> status;
      default -> status < 500 ? 400 : 500;
    };
  }
}
