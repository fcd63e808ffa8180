package org.staywright.spring;

/**
 * What is told of springs by their kind, one side each; a kind that needs none is told plainly.
 *
 * @param <T> what is told
 */
public interface Kinds<T> {

  /** Of any that has nothing to tell of its own. */
  T plain();

  default T locking(LockingSpring locking) {
    return plain();
  }

  default T damper(Damper damper) {
    return plain();
  }

  default T coil(CoilSpring coil) {
    return plain();
  }
}
