package org.staywright.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;
import org.staywright.account.SigningIn;
import org.staywright.web.audit.Sender;
import org.staywright.web.door.SessionCookie;
import org.staywright.web.door.TryLimit;
import org.staywright.web.shell.PageText;

/** In by name and password. */
@Path("/sign-in")
@Produces(MediaType.TEXT_HTML)
public class SignInPage {

  private final SigningIn signingIn;
  private final TryLimit tries;
  private final Sender sender;

  SignInPage(SigningIn signingIn, TryLimit tries, Sender sender) {
    this.signingIn = signingIn;
    this.tries = tries;
    this.sender = sender;
  }

  @GET
  public TemplateInstance ask(@QueryParam("to") @DefaultValue("/") String to) {
    return Templates.signIn("", within(to), "");
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response signIn(
      @FormParam("name") @DefaultValue("") String name,
      @FormParam("password") @DefaultValue("") String password,
      @FormParam("to") @DefaultValue("/") String to,
      RoutingContext request) {
    tries.take(request);
    Optional<String> secret = signingIn.signIn(sender.named(name), name, password);
    if (secret.isEmpty()) {
      String fault = PageText.text("account.refused");
      return Response.status(401).entity(Templates.signIn(name, within(to), fault)).build();
    }
    // Whoever was signed in here before is not any more.
    SessionCookie.shown(request).ifPresent(signingIn::signOut);
    SessionCookie.give(request, secret.get());
    return Response.seeOther(URI.create(within(to))).build();
  }

  /** Back to a page of ours, never to another server. */
  private static String within(String to) {
    try {
      URI address = new URI(to);
      String path = address.getRawPath();
      boolean ours = address.getRawAuthority() == null && address.getScheme() == null;
      if (ours && path != null && path.startsWith("/") && !path.startsWith("//")) {
        return path + (address.getRawQuery() == null ? "" : "?" + address.getRawQuery());
      }
    } catch (URISyntaxException unreadable) {
      // As if nothing had been asked for.
    }
    return "/";
  }

  @CheckedTemplate(basePath = "account")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance signIn(String name, String to, String fault);
  }
}
