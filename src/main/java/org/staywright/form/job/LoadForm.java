package org.staywright.form.job;

import java.util.List;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.Mechanism;
import org.staywright.unit.Fault;

/** One type of load: its fields, and the mechanism that they make. */
public interface LoadForm {

  /** Its fields, named after the type. */
  Shape shape();

  /** Whether its spring hangs on mounts. */
  boolean mounted();

  /** Whether its travel turns or shifts. */
  Mechanism.Movement kind();

  /** Whether a hand moves it, by springs with end fittings. */
  default boolean handMoved() {
    return true;
  }

  /** What is wrong between fields that are each sound alone. */
  List<Fault> faults(JobTree job);

  /** Whatever is at fault comes out as NaN or null. */
  Mechanism mechanism(JobTree job);
}
