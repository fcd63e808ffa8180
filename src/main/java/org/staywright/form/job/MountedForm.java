package org.staywright.form.job;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.unit.Fault;

/** A type of load whose spring hangs on two mounts. */
interface MountedForm extends LoadForm {

  List<String> MOUNTS =
      List.of(
          "/mounts/frameMm/x",
          "/mounts/frameMm/y",
          "/mounts/movingMm/x",
          "/mounts/movingMm/y",
          "/mounts/lateralOffsetMm");

  /** Fields of the load that its geometry hangs on. */
  List<String> geometry();

  @Override
  default boolean mounted() {
    return true;
  }

  /** The mechanism finds them, once all is there that it is made of. */
  @Override
  default List<Fault> faults(JobTree job) {
    return Stream.concat(geometry().stream(), MOUNTS.stream()).allMatch(job::given)
        ? mechanism(job).faults().stream().map(job::placed).toList()
        : List.of();
  }
}
