package org.staywright.fit.job;

import java.util.List;

/**
 * How springs and load may turn out together. Which of the four corners is the worst depends on
 * where gravity and the spring pull, and changes along the way: a requirement holds in all of them.
 *
 * @param spring weak or strong; nominal for what is most likely
 * @param load heavy or light; nominal for what is most likely
 */
public record Corner(SpringState spring, LoadState load) {

  public static final Corner NOMINAL = new Corner(SpringState.NOMINAL, LoadState.NOMINAL);

  /** The four in which a requirement must hold. */
  public static final List<Corner> ALL =
      List.of(
          new Corner(SpringState.WEAK, LoadState.HEAVY),
          new Corner(SpringState.WEAK, LoadState.LIGHT),
          new Corner(SpringState.STRONG, LoadState.HEAVY),
          new Corner(SpringState.STRONG, LoadState.LIGHT));
}
