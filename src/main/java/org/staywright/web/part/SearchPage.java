package org.staywright.web.part;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.staywright.form.replace.MeasuredForm;
import org.staywright.form.schema.FlatForm;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Refusal;
import org.staywright.web.field.FormFields;
import org.staywright.web.field.Typed;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** The stock by what was measured on a spring in the hand. */
@Path("/parts")
@Produces(MediaType.TEXT_HTML)
public final class SearchPage {

  private final CurrentRange stock;

  SearchPage(CurrentRange stock) {
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    Wording wording = PageText.wording();
    Typed typed = Typed.of(MeasuredForm.MEASURED, uri.getQueryParameters(), wording);
    try {
      JsonNode tree = MeasuredForm.withDefaults(typed.values());
      Typed values = new Typed(FlatForm.texts(MeasuredForm.MEASURED, tree), typed.texts());
      return Templates.search(
          new FormFields(wording, MeasuredForm.MEASURED, values, List.of(), List.of()),
          SearchView.of(MeasuredForm.read(tree), typed.values(), stock.get(), wording));
    } catch (Refusal refusal) {
      return Templates.search(
          new FormFields(wording, MeasuredForm.MEASURED, typed, refusal.faults(), List.of()), null);
    }
  }

  @CheckedTemplate(basePath = "part")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance search(FormFields form, SearchView found);
  }
}
