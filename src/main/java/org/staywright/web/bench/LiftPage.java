package org.staywright.web.bench;

import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.staywright.stock.CurrentRange;
import org.staywright.web.query.Bench;

/** A load that slides on a straight guide. */
@Path("/lift")
@Produces(MediaType.TEXT_HTML)
public final class LiftPage extends BenchPage {

  LiftPage(CurrentRange stock) {
    super(stock, Bench.LIFT);
  }
}
