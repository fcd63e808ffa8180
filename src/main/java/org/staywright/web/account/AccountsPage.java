package org.staywright.web.account;

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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.staywright.account.Account;
import org.staywright.account.Accounts;
import org.staywright.account.Role;
import org.staywright.unit.Refusal;
import org.staywright.web.audit.Sender;
import org.staywright.web.shell.PageText;

/** The accounts of all, for an administrator. */
@Path("/accounts")
@Produces(MediaType.TEXT_HTML)
public class AccountsPage {

  private final Accounts accounts;
  private final Sender sender;

  AccountsPage(Accounts accounts, Sender sender) {
    this.accounts = accounts;
    this.sender = sender;
  }

  @GET
  public TemplateInstance show() {
    return page("", "", "");
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response add(
      @FormParam("name") @DefaultValue("") String name,
      @FormParam("role") @DefaultValue("") String role) {
    try {
      String word = accounts.add(sender.typed(null), name, RoleChoice.sent(role));
      return Response.ok(page("", name.strip(), word)).build();
    } catch (Refusal refusal) {
      return refused(refusal);
    }
  }

  @POST
  @Path("{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(
      @PathParam("id") long id,
      @FormParam("role") @DefaultValue("") String role,
      @FormParam("active") String active) {
    Account account = accounts.find(id).orElseThrow(NotFoundException::new);
    try {
      accounts.change(sender.typed(null), account.id, RoleChoice.sent(role), active != null);
      return Response.seeOther(URI.create("/accounts")).build();
    } catch (Refusal refusal) {
      return refused(refusal);
    }
  }

  /** A new word for one who has forgotten his password. */
  @POST
  @Path("{id}/word")
  public TemplateInstance word(@PathParam("id") long id) {
    Account account = accounts.find(id).orElseThrow(NotFoundException::new);
    return page("", account.name, accounts.invite(sender.typed(null), id));
  }

  private Response refused(Refusal refusal) {
    String fault = PageText.wording().fault(refusal.faults().get(0));
    return Response.status(422).entity(page(fault, "", "")).build();
  }

  private TemplateInstance page(String fault, String invited, String word) {
    List<AccountRow> rows = accounts.all().stream().map(AccountRow::of).toList();
    return Templates.accounts(rows, AccountRow.roles(Role.READER), fault, invited, word);
  }

  @CheckedTemplate(basePath = "account")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance accounts(
        List<AccountRow> rows, List<RoleChoice> roles, String fault, String invited, String word);
  }
}
