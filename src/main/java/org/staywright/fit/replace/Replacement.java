package org.staywright.fit.replace;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.staywright.part.Coded;
import org.staywright.part.Fitting;
import org.staywright.part.Part;
import org.staywright.spring.Spring;

/**
 * A part that may stand in for the old spring. SI.
 *
 * @param part one would take first
 * @param likelihood that the old spring is this part or one alike in all that was measured
 * @param alike numbers of the others
 * @param kind how it stands in
 * @param differences from the old spring
 * @param rodFitting for its rod, null where none has the thread
 * @param tubeFitting for its tube, likewise
 */
public record Replacement(
    Part part,
    double likelihood,
    List<String> alike,
    Interchange kind,
    List<Difference> differences,
    @Nullable Fitting rodFitting,
    @Nullable Fitting tubeFitting) {

  /** How a part stands in for the old spring. */
  public enum Interchange implements Coded {
    /** On the same mounts, with the same ends, over the same travel. */
    DROP_IN,
    /** Over the same travel, but on other end fittings. */
    OTHER_FITTINGS,
    /** Longer or shorter, open or closed. */
    CHANGED_TRAVEL
  }

  public Replacement {
    alike = List.copyOf(alike);
    differences = List.copyOf(differences);
  }

  /** Both fittings from shoulder to centre, m; 0 for none. */
  public double reach() {
    return rodFitting == null || tubeFitting == null
        ? 0
        : rodFitting.lengthToCentre() + tubeFitting.lengthToCentre();
  }

  /**
   * Whether it may be ordered as it stands: not while parts of other forces are alike in all that
   * was measured, nor without end fittings.
   */
  public boolean orderable(Measurements old) {
    return rodFitting != null && (old.forceKnown() || alike.isEmpty());
  }

  /** Between the centres, m. */
  public double extended() {
    return part.spring().extendedLength() + reach();
  }

  /** Between the centres, m. */
  public double compressed() {
    return part.spring().compressedLength() + reach();
  }

  /** What an instrument would show of the new spring with its fittings, m or N. */
  public double shows(Gauge gauge) {
    double through = gauge.basis() == Gauge.Basis.BARE ? 0 : reach();
    Spring spring = part.spring();
    return through
        + switch (gauge.column()) {
          case ROD_DIAMETER -> spring.rodDiameter();
          case TUBE_DIAMETER -> spring.tubeDiameter();
          case STROKE -> spring.stroke();
          case EXTENDED_LENGTH -> spring.extendedLength();
          case COMPRESSED_LENGTH -> spring.compressedLength();
          default -> spring.force();
        };
  }
}
