package org.staywright.fit.replace;

import org.staywright.part.Coded;

/** How a part stands in for the old spring. */
public enum Kind implements Coded {
  /** On the same mounts, with the same ends, over the same travel. */
  DROP_IN,
  /** Over the same travel, but on other end fittings. */
  OTHER_FITTINGS,
  /** Longer or shorter, open or closed. */
  CHANGED_TRAVEL
}
