package org.staywright.fit.replace;

import org.staywright.part.Coded;
import org.staywright.part.Column;

/**
 * What can be measured on an old spring or between its mounts, and the column of the range that it
 * tells about.
 *
 * <p>Assumption: pushed right in, no rod stands out, as the outline draws it. So the tube is as
 * long as the compressed spring and the rod that shows is the stroke; the few millimetres of rod
 * that many springs leave out belong into the uncertainty.
 */
public enum Gauge implements Coded {
  ROD_DIAMETER(Column.ROD_DIAMETER, Basis.BARE),
  TUBE_DIAMETER(Column.TUBE_DIAMETER, Basis.BARE),
  STROKE(Column.STROKE, Basis.BARE),
  EXPOSED_ROD(Column.STROKE, Basis.BARE),
  TUBE_LENGTH(Column.COMPRESSED_LENGTH, Basis.BARE),
  EXTENDED_LENGTH(Column.EXTENDED_LENGTH, Basis.BARE),
  COMPRESSED_LENGTH(Column.COMPRESSED_LENGTH, Basis.BARE),
  EXTENDED_CENTRES(Column.EXTENDED_LENGTH, Basis.CENTRES),
  COMPRESSED_CENTRES(Column.COMPRESSED_LENGTH, Basis.CENTRES),
  /** The mounts with the flap closed: the spring has some stroke to spare there. */
  CENTRES_CLOSED(Column.COMPRESSED_LENGTH, Basis.IN_PLACE),
  /** The mounts with the flap open, likewise. */
  CENTRES_OPEN(Column.EXTENDED_LENGTH, Basis.IN_PLACE),
  PRINTED_FORCE(Column.FORCE, Basis.BARE),
  /** What the flap asks of each spring, found at its handle. */
  FLAP_FORCE(Column.FORCE, Basis.BARE);

  /** What a reading includes. */
  enum Basis {
    /** The spring alone. */
    BARE,
    /** Both end fittings too. */
    CENTRES,
    /** Both end fittings and what the spring has to spare. */
    IN_PLACE
  }

  private final Column column;
  private final Basis basis;

  Gauge(Column column, Basis basis) {
    this.column = column;
    this.basis = basis;
  }

  public Column column() {
    return column;
  }

  Basis basis() {
    return basis;
  }
}
