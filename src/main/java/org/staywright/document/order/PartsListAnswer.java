package org.staywright.document.order;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.staywright.job.order.Mate;
import org.staywright.job.order.PartsList;
import org.staywright.part.FittingType;
import org.staywright.wording.Wording;

/** A parts list as it is sent. Prices are net; a sum is null where a price is missing. */
public record PartsListAnswer(
    List<LineAnswer> lines,
    @Nullable BigDecimal total,
    @Nullable String currency,
    @Nullable LocalDate validUntil,
    @Schema(enumeration = "net") String vatBasis,
    int leadTimeDays,
    BigDecimal massKg,
    List<Unmatched> unmatched,
    List<ListedJobAnswer> jobs) {

  /** What belongs beside a part but is not in the range. */
  public record Unmatched(FittingType kind, @Schema(ref = "part-number") String beside) {

    static Unmatched of(Mate.Missing missing) {
      return new Unmatched(missing.type(), missing.beside());
    }
  }

  public static PartsListAnswer of(PartsList list, Wording wording) {
    OrderText text = new OrderText(wording);
    return new PartsListAnswer(
        IntStream.range(0, list.lines().size())
            .mapToObj(i -> LineAnswer.of(i + 1, list.lines().get(i), text))
            .toList(),
        list.total(),
        list.currency(),
        list.validUntil(),
        "net",
        list.leadTimeDays(),
        list.mass(),
        list.unmatched().stream().map(Unmatched::of).toList(),
        list.jobs().stream().map(job -> ListedJobAnswer.of(job, text)).toList());
  }

  /** What is chosen although it does not fit. */
  List<String> marks() {
    return jobs.stream().map(ListedJobAnswer::chosenAlthough).filter(Objects::nonNull).toList();
  }
}
