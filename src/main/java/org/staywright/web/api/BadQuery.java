package org.staywright.web.api;

import java.util.List;
import org.staywright.unit.Fault;

/** Thrown where the parameters of an address are at fault. */
final class BadQuery extends RuntimeException {

  private final transient List<Fault> faults;

  BadQuery(List<Fault> faults) {
    super(faults.toString());
    this.faults = List.copyOf(faults);
  }

  List<Fault> faults() {
    return faults;
  }
}
