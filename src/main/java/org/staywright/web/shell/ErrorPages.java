package org.staywright.web.shell;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Gives an error the look of a page, wherever a page was asked for. */
public final class ErrorPages {

  /** What says of its bytes how they are read. */
  public static final MediaType HTML = MediaType.TEXT_HTML_TYPE.withCharset("UTF-8");

  @ServerResponseFilter
  void dress(ContainerRequestContext request, ContainerResponseContext response) {
    int status = response.getStatus();
    String path = request.getUriInfo().getPath();
    boolean page = !path.startsWith("/api/") && !path.startsWith("/q/");
    boolean dressed = response.getEntity() instanceof TemplateInstance;
    if (status >= 400 && page && !dressed) {
      response.setEntity(page(status).render(), null, HTML);
    }
  }

  private static TemplateInstance page(int status) {
    return page(status, PageText.wording().text("page.error." + known(status) + ".advice"));
  }

  /** A page that says what to do in a sentence of its own. */
  public static TemplateInstance page(int status, String advice) {
    return Templates.error(status, PageText.wording().text("page.error." + known(status)), advice);
  }

  private static int known(int status) {
    return switch (status) {
      case 403, 404, 422, 429, 503 -> status;
      default -> status < 500 ? 400 : 500;
    };
  }

  @CheckedTemplate(basePath = "shell")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance error(int status, String heading, String advice);
  }
}
