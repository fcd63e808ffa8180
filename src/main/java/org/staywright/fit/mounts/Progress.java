package org.staywright.fit.mounts;

/** Who waits for long work: is told how far it is, and may stop it. Called from any thread. */
@FunctionalInterface
public interface Progress {

  /** Nobody waits. */
  Progress UNSEEN = (done, total) -> true;

  /**
   * @param done so far
   * @param total in all
   * @return false to stop
   */
  boolean goOn(int done, int total);
}
