package org.staywright.unit;

import java.util.List;

/** Thrown where an input cannot be computed with; carries every fault found. */
public final class Refusal extends RuntimeException {

  private final transient List<Fault> faults;

  public Refusal(List<Fault> faults) {
    super(faults.toString());
    this.faults = List.copyOf(faults);
  }

  public Refusal(Fault fault) {
    this(List.of(fault));
  }

  public List<Fault> faults() {
    return faults;
  }
}
