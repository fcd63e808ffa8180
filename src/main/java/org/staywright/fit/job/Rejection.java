package org.staywright.fit.job;

import org.staywright.part.Coded;

/** Why a part is out, in the order of asking: each counts once, by the first that fails. */
public enum Rejection implements Coded {
  FAMILY,
  FINISH,
  STOCK,
  TEMPERATURE,
  FITTING,
  TOO_LONG_CLOSED,
  TOO_SHORT_OPEN,
  /** Spring-stop only: the spring would never stop the flap. */
  TOO_LONG_OPEN,
  /** Under a tenth of the gas would be left at the end of the service. */
  AGEING,
  PRESSURE,
  BUCKLING,
  FITTING_LOAD,
  SWING,
  /** A column whose lock would have to hold more than it can. */
  LOCK_FORCE
}
