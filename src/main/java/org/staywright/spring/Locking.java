package org.staywright.spring;

import java.util.Locale;

/** What a locked spring gives way by. */
public enum Locking {
  /** Gas on both sides of the piston. */
  ELASTIC,
  /** Oil on the full side: rigid where the rod is pushed in. */
  RIGID_PUSH,
  /** Oil on the rod's side: rigid where the rod is pulled out. */
  RIGID_PULL,
  /** Oil on both sides. */
  RIGID_BOTH;

  /** As written in JSON and CSV: {@code rigid-push}. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** True where oil stands against a rod that is pushed in. */
  public boolean rigidPushed() {
    return this == RIGID_PUSH || this == RIGID_BOTH;
  }

  /** True where oil stands against a rod that is pulled out. */
  public boolean rigidPulled() {
    return this == RIGID_PULL || this == RIGID_BOTH;
  }
}
