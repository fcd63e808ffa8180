package org.staywright.mechanism;

/** A mechanism whose spring hangs on two mounts, and might hang elsewhere. */
public interface Mounted extends Mechanism {

  Mounts mounts();

  /** The same with the spring hung elsewhere. */
  Mounted at(Mounts mounts);

  /** dL/dq, m/rad or 1. */
  double lever(double q);
}
