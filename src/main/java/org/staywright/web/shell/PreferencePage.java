package org.staywright.web.shell;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.staywright.unit.Units;

/** Keeps what a reader chose in the head of a page, or by an address. */
@Path("/preferences")
public final class PreferencePage {

  /** Back to the page it was chosen on, which shows itself anew. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(
      @FormParam(Preference.LANGUAGE) String language,
      @FormParam(Preference.UNITS) String units,
      @HeaderParam("Referer") String from) {
    keep(language, units);
    return Response.seeOther(URI.create(path(from))).build();
  }

  /** What a page's address asks for stays, so that what is loaded into it agrees with it. */
  @ServerResponseFilter
  void keep(ContainerRequestContext request, ContainerResponseContext response) {
    if (request.getUriInfo().getPath().startsWith("/api/")) {
      return;
    }
    MultivaluedMap<String, String> query = request.getUriInfo().getQueryParameters();
    keep(query.getFirst(Preference.LANGUAGE), query.getFirst(Preference.UNITS));
    response.getHeaders().add(HttpHeaders.VARY, "Accept-Language, Cookie");
    response
        .getHeaders()
        .putSingle(HttpHeaders.CONTENT_LANGUAGE, Preference.now().language().toLanguageTag());
  }

  private static void keep(String language, String units) {
    Preference.language(language).ifPresent(l -> Preference.keep(Preference.LANGUAGE, language));
    Units.of(units).ifPresent(u -> Preference.keep(Preference.UNITS, units));
  }

  /** Path and query of our own page, without what it asked for itself. */
  private static String path(String from) {
    try {
      URI page = URI.create(from == null ? "/" : from);
      String path =
          page.getRawPath() == null || page.getRawPath().isEmpty() ? "/" : page.getRawPath();
      String query = page.getRawQuery() == null ? "" : without(page.getRawQuery());
      // Two strokes at the beginning would name another server.
      return path.replaceFirst("^/+", "/") + (query.isEmpty() ? "" : "?" + query);
    } catch (IllegalArgumentException unreadable) {
      return "/";
    }
  }

  private static String without(String query) {
    return Arrays.stream(query.split("&"))
        .filter(pair -> !pair.startsWith(Preference.LANGUAGE + "="))
        .filter(pair -> !pair.startsWith(Preference.UNITS + "="))
        .collect(Collectors.joining("&"));
  }
}
