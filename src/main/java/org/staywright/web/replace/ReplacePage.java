package org.staywright.web.replace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.staywright.document.job.OrderFile;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.replace.ReplacementNote;
import org.staywright.fit.replace.LabelReading;
import org.staywright.fit.replace.Replacement;
import org.staywright.form.replace.ReplacementForm;
import org.staywright.job.order.Outfit;
import org.staywright.job.order.PartsList;
import org.staywright.job.order.Wanted;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.unit.Refusal;
import org.staywright.web.job.ListView;
import org.staywright.web.part.LabelView;
import org.staywright.web.query.ReplaceQuery;
import org.staywright.web.shell.Download;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** An old spring in the hand: what replaces it, and what to order. */
@Path("/replace")
@Produces(MediaType.TEXT_HTML)
public final class ReplacePage {

  private final CurrentRange stock;
  private final Clock clock = Clock.systemUTC();

  ReplacePage(CurrentRange stock) {
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(@Context UriInfo uri) {
    Wording wording = PageText.wording();
    Map<String, List<String>> typed = ReplaceQuery.known(uri.getQueryParameters());
    boolean all = "true".equals(uri.getQueryParameters().getFirst("all"));
    LabelReading label = ReplaceQuery.label(typed);
    if (typed.isEmpty()) {
      return page(new ReplaceFields(typed, List.of(), all, wording), null, null);
    }
    try {
      ReplacementForm form = ReplacementForm.typed(ReplaceQuery.readable(typed, label));
      Swap swap = Swap.of(stock.get(), form, LocalDate.now(clock));
      return page(
          new ReplaceFields(typed, List.of(), all, wording),
          label,
          SwapView.of(swap, typed, wording));
    } catch (Refusal refusal) {
      return page(new ReplaceFields(typed, refusal.faults(), all, wording), label, null);
    }
  }

  private static TemplateInstance page(ReplaceFields form, LabelReading label, SwapView swap) {
    return Templates.replace(
        form, label == null ? null : LabelView.of(label, PageText.wording()), swap);
  }

  /** The force that nobody knows, found at the flap step by step. */
  @GET
  @Path("flap")
  public TemplateInstance survey(@Context UriInfo uri) {
    Map<String, List<String>> typed = ReplaceQuery.known(uri.getQueryParameters());
    return Templates.replaceFlap(ReplaceFields.survey(typed, PageText.wording()));
  }

  /** Old and new side by side, for one part of the answer. */
  @GET
  @Path("note.pdf")
  @Produces("application/pdf")
  public Response note(@QueryParam("part") String part, @Context UriInfo uri) {
    Map<String, List<String>> typed = ReplaceQuery.known(uri.getQueryParameters());
    Swap swap = swap(typed).orElseThrow(NotFoundException::new);
    Replacement now =
        swap.answer().found().stream()
            .filter(one -> one.part().number().equals(part))
            .findFirst()
            .orElseThrow(NotFoundException::new);
    byte[] pdf = ReplacementNote.pdf(swap.old(), now, PageText.wording());
    return Download.shown(pdf, "replacement-" + part + ".pdf");
  }

  /** Empty where what an address says cannot be measured. */
  private Optional<Swap> swap(Map<String, List<String>> typed) {
    try {
      LabelReading label = ReplaceQuery.label(typed);
      ReplacementForm form = ReplacementForm.typed(ReplaceQuery.readable(typed, label));
      return Optional.of(Swap.of(stock.get(), form, LocalDate.now(clock)));
    } catch (Refusal refusal) {
      return Optional.empty();
    }
  }

  /** What to order, one tap from the answer. */
  @GET
  @Path("list")
  public TemplateInstance list(
      @QueryParam("part") String part,
      @QueryParam("count") String count,
      @QueryParam("rod") String rod,
      @QueryParam("tube") String tube,
      @Context UriInfo uri) {
    Wording wording = PageText.wording();
    return Templates.replaceList(
        ListView.of(List.of(), list(part, count, rod, tube), wording),
        "/replace/parts-list.pdf?" + uri.getRequestUri().getRawQuery(),
        part);
  }

  @GET
  @Path("parts-list.pdf")
  @Produces("application/pdf")
  public Response pdf(
      @QueryParam("part") String part,
      @QueryParam("count") String count,
      @QueryParam("rod") String rod,
      @QueryParam("tube") String tube) {
    byte[] pdf = PartsListPdf.of(list(part, count, rod, tube), PageText.wording());
    return Download.shown(pdf, OrderFile.PDF.file(part));
  }

  private PartsList list(String number, String count, String rod, String tube) {
    Range range = stock.get();
    if (number == null || count == null || !count.matches("[1-8]")) {
      throw new NotFoundException();
    }
    Part part = range.part(number).orElseThrow(NotFoundException::new);
    Outfit set =
        new Outfit(part, Integer.parseInt(count), end(range, rod), end(range, tube), false);
    String name = PageText.wording().text("replace.order.name", number);
    return PartsList.of(
        List.of(new Wanted(name, set, 1, 0, range.fittings(), range.revision(), 0)));
  }

  private static Fitting end(Range range, String number) {
    return range
        .fitting(number == null ? "" : number)
        .filter(fitting -> fitting.type().endsASpring())
        .orElseThrow(NotFoundException::new);
  }

  @CheckedTemplate(basePath = "replace")
  static final class Templates {

    private Templates() {}

    static native TemplateInstance replace(ReplaceFields form, LabelView label, SwapView swap);

    static native TemplateInstance replaceFlap(ReplaceFields form);

    static native TemplateInstance replaceList(ListView list, String pdf, String part);
  }
}
