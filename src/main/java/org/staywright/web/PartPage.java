package org.staywright.web;

import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.staywright.stock.CurrentRange;

/** One part of the stock. */
@Path("/parts/{partNumber}")
@Produces(MediaType.TEXT_HTML)
public final class PartPage {

  private final CurrentRange stock;

  PartPage(CurrentRange stock) {
    this.stock = stock;
  }

  @GET
  public TemplateInstance show(@PathParam("partNumber") String partNumber) {
    return Templates.part(
        stock
            .get()
            .part(partNumber)
            .map(part -> PartView.of(part, Say.wording()))
            .orElseThrow(NotFoundException::new));
  }
}
