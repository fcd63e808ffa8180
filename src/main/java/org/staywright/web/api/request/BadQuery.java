package org.staywright.web.api.request;

import java.util.List;
import org.staywright.unit.Fault;

/** Thrown where the parameters of an address are at fault: 400, or 422 where they can be read. */
public final class BadQuery extends RuntimeException {

  private final transient List<Fault> faults;
  private final int status;

  BadQuery(List<Fault> faults) {
    this(400, faults);
  }

  private BadQuery(int status, List<Fault> faults) {
    super(faults.toString());
    this.status = status;
    this.faults = List.copyOf(faults);
  }

  /** A query that can be read and yet asks for what cannot be computed. */
  static BadQuery uncomputable(List<Fault> faults) {
    return new BadQuery(422, faults);
  }

  public int status() {
    return status;
  }

  public List<Fault> faults() {
    return faults;
  }
}
