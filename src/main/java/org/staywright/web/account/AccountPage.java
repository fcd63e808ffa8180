package org.staywright.web.account;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Arrays;
import java.util.List;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.account.SignedIn;
import org.staywright.account.SigningIn;
import org.staywright.database.Author;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.Sender;
import org.staywright.web.door.SessionCookie;
import org.staywright.web.door.TryLimit;
import org.staywright.web.door.Visitor;
import org.staywright.web.shell.PageText;

/** One's own account: its password, its tokens for programs, and the way out. */
@Path("/account")
@Produces(MediaType.TEXT_HTML)
public class AccountPage {

  private final Accounts accounts;
  private final SigningIn signingIn;
  private final Visitor visitor;
  private final TryLimit tries;
  private final Sender sender;

  AccountPage(
      Accounts accounts, SigningIn signingIn, Visitor visitor, TryLimit tries, Sender sender) {
    this.accounts = accounts;
    this.signingIn = signingIn;
    this.visitor = visitor;
    this.tries = tries;
    this.sender = sender;
  }

  @GET
  public TemplateInstance show() {
    return page("", "", "");
  }

  @POST
  @Path("password")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Object password(
      @FormParam("old") @DefaultValue("") String old,
      @FormParam("password") @DefaultValue("") String password,
      RoutingContext request) {
    tries.take(request);
    try {
      Accounts.requireGood(password, own().name());
    } catch (Refusal refusal) {
      return Response.status(422).entity(page(said(refusal), "", "")).build();
    }
    if (!signingIn.changePassword(sender.typed(null), own().account(), old, password)) {
      return Response.status(422).entity(page(PageText.text("account.old.wrong"), "", "")).build();
    }
    signingIn
        .signIn(sender.typed(null), own().name(), password)
        .ifPresent(secret -> SessionCookie.give(request, secret));
    return Response.seeOther(URI.create("/account")).build();
  }

  @POST
  @Path("tokens")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response addToken(
      @FormParam("name") @DefaultValue("") String name,
      @FormParam("role") @DefaultValue("") String role,
      @FormParam("days") @DefaultValue("") String days) {
    try {
      Author author = sender.typed(null);
      String secret =
          accounts.addToken(author, own().account(), name, RoleChoice.sent(role), whole(days));
      return Response.ok(page("", "", secret)).build();
    } catch (Refusal refusal) {
      return Response.status(422).entity(page("", said(refusal), "")).build();
    }
  }

  @POST
  @Path("tokens/{id}/remove")
  public Response removeToken(@PathParam("id") long id) {
    if (!accounts.removeToken(sender.typed(null), own().account(), id)) {
      throw new NotFoundException();
    }
    return Response.seeOther(URI.create("/account")).build();
  }

  @POST
  @Path("sign-out")
  public Response signOut(RoutingContext request) {
    SessionCookie.shown(request).ifPresent(signingIn::signOut);
    SessionCookie.take(request);
    return Response.seeOther(URI.create("/sign-in")).build();
  }

  /** Beyond all bounds where it is no number. */
  private static int whole(String days) {
    return days.strip().matches("[0-9]{1,9}") ? Integer.parseInt(days.strip()) : -1;
  }

  private SignedIn own() {
    return visitor.account().orElseThrow(NotFoundException::new);
  }

  private static String said(Refusal refusal) {
    return String.join(" ", refusal.faults().stream().map(PageText.wording()::fault).toList());
  }

  private TemplateInstance page(String passwordFault, String tokenFault, String secret) {
    SignedIn who = own();
    List<RoleChoice> roles =
        Arrays.stream(Role.values())
            .filter(who.role()::may)
            .map(role -> RoleChoice.of(role, Role.READER))
            .toList();
    List<TokenRow> tokens = accounts.tokens(who.account()).stream().map(TokenRow::of).toList();
    return Templates.account(
        who.name(),
        RoleChoice.label(who.role()),
        Accounts.SHORTEST_PASSWORD,
        passwordFault,
        tokenFault,
        secret,
        roles,
        tokens);
  }

  @CheckedTemplate(basePath = "account")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance account(
        String name,
        String role,
        int shortest,
        String passwordFault,
        String tokenFault,
        String secret,
        List<RoleChoice> roles,
        List<TokenRow> tokens);
  }
}
