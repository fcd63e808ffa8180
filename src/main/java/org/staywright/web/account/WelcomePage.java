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
import org.staywright.account.Accounts;
import org.staywright.account.SigningIn;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.Sender;
import org.staywright.web.door.SessionCookie;
import org.staywright.web.door.TryLimit;
import org.staywright.web.shell.PageText;

/** A password chosen with the word that one was given for it. */
@Path("/welcome")
@Produces(MediaType.TEXT_HTML)
public class WelcomePage {

  private final SigningIn signingIn;
  private final TryLimit tries;
  private final Sender sender;

  WelcomePage(SigningIn signingIn, TryLimit tries, Sender sender) {
    this.signingIn = signingIn;
    this.tries = tries;
    this.sender = sender;
  }

  @GET
  public TemplateInstance ask(@QueryParam("name") @DefaultValue("") String name) {
    return Templates.welcome(name, "", Accounts.SHORTEST_PASSWORD);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(
      @FormParam("name") @DefaultValue("") String name,
      @FormParam("word") @DefaultValue("") String word,
      @FormParam("password") @DefaultValue("") String password,
      RoutingContext request) {
    tries.take(request);
    try {
      Accounts.requireGood(password, name);
    } catch (Refusal refusal) {
      return refused(422, name, PageText.wording().fault(refusal.faults().get(0)));
    }
    if (!signingIn.choosePassword(sender.named(name), name, word, password)) {
      return refused(401, name, PageText.text("account.word.refused"));
    }
    signingIn
        .signIn(sender.named(name), name, password)
        .ifPresent(secret -> SessionCookie.give(request, secret));
    return Response.seeOther(URI.create("/")).build();
  }

  private static Response refused(int status, String name, String fault) {
    TemplateInstance page = Templates.welcome(name, fault, Accounts.SHORTEST_PASSWORD);
    return Response.status(status).entity(page).build();
  }

  @CheckedTemplate(basePath = "account")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance welcome(String name, String fault, int shortest);
  }
}
