package org.staywright.job.order;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.Instant;
import java.util.Objects;
import org.staywright.mechanism.Mounts.RodEnd;

/**
 * The part chosen for a job, as it stood in a stock revision.
 *
 * @param part number of the spring
 * @param count of springs in a set
 * @param rodFitting number, null for a column, which needs none
 * @param tubeFitting number, likewise
 * @param rodEndAt where the rod hangs
 * @param sets wanted
 * @param spares of each line beyond the sets
 * @param brackets whether brackets belong to the set
 * @param evenIfMisfit whether the part is wanted although it does not fit, null as good as false
 * @param revision of the stock
 * @param made when it was frozen
 */
@Embeddable
public record Choice(
    @Column(name = "choice_part") String part,
    @Column(name = "choice_count") Integer count,
    @Column(name = "choice_rod_fitting") String rodFitting,
    @Column(name = "choice_tube_fitting") String tubeFitting,
    @Column(name = "choice_rod_end_at") @Enumerated(EnumType.STRING) RodEnd rodEndAt,
    @Column(name = "choice_sets") Integer sets,
    @Column(name = "choice_spares") Integer spares,
    @Column(name = "choice_brackets") Boolean brackets,
    @Column(name = "choice_even_if_misfit") Boolean evenIfMisfit,
    @Column(name = "choice_revision") Integer revision,
    @Column(name = "choice_made") Instant made) {

  /** Whether end fittings belong to it: a column has none. */
  public boolean fitted() {
    return rodFitting != null;
  }

  /** Whether it is an earlier one once more, whatever the numbers that are ordered of it. */
  public boolean repeats(Choice earlier) {
    return earlier != null
        && part.equals(earlier.part)
        && count.equals(earlier.count)
        && Objects.equals(rodFitting, earlier.rodFitting)
        && Objects.equals(tubeFitting, earlier.tubeFitting)
        && rodEndAt == earlier.rodEndAt
        && despite() == earlier.despite()
        && revision.equals(earlier.revision);
  }

  /** True where the part is wanted although it does not fit. */
  public boolean despite() {
    return Boolean.TRUE.equals(evenIfMisfit);
  }
}
