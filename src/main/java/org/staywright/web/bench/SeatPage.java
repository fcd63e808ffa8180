package org.staywright.web.bench;

import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.staywright.stock.CurrentRange;
import org.staywright.web.query.Bench;

/** A seat on a column that locks. */
@Path("/seat")
@Produces(MediaType.TEXT_HTML)
public final class SeatPage extends BenchPage {

  SeatPage(CurrentRange stock) {
    super(stock, Bench.SEAT);
  }
}
