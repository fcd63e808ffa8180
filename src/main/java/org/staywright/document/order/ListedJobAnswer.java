package org.staywright.document.order;

import java.math.BigDecimal;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.job.order.ListedJob;
import org.staywright.job.order.Wanted;

/**
 * One job of a parts list.
 *
 * @param count of springs in a set
 * @param chosenAlthough what a part misses that was chosen although it does not fit
 */
public record ListedJobAnswer(
    String name,
    @Schema(ref = "part-number") String partNumber,
    int count,
    int sets,
    int spares,
    int stockRevision,
    @Nullable BigDecimal setCost,
    @Nullable Integer setsInTenYears,
    @Nullable BigDecimal tenYearCost,
    @Nullable String chosenAlthough) {

  static ListedJobAnswer of(ListedJob job, OrderText text) {
    Wanted wanted = job.wanted();
    return new ListedJobAnswer(
        wanted.job(),
        wanted.outfit().part().number(),
        wanted.outfit().count(),
        wanted.sets(),
        wanted.spares(),
        wanted.revision(),
        job.setCost(),
        job.setsInTenYears(),
        job.tenYearCost(),
        text.mark(job));
  }
}
