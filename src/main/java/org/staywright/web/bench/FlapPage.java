package org.staywright.web.bench;

import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.staywright.stock.CurrentRange;
import org.staywright.web.query.Bench;

/** A flap on a hinge. */
@Path("/flap")
@Produces(MediaType.TEXT_HTML)
public final class FlapPage extends BenchPage {

  FlapPage(CurrentRange stock) {
    super(stock, Bench.FLAP);
  }
}
