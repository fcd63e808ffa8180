package org.staywright.fit;

import org.staywright.mechanism.Travel;
import org.staywright.part.Part;
import org.staywright.spring.ChargedSpring;

/** The three cases a part is judged in: what is most likely, and the worst either way. */
enum Load {
  NOMINAL {
    @Override
    double kelvin(Job.Conditions conditions) {
      return conditions.nominal();
    }

    @Override
    double[] load(Travel travel) {
      return travel.load();
    }

    @Override
    ChargedSpring charged(Part part, double gasLeft) {
      return part.spring().charged();
    }
  },
  /** Cold, under-filled, aged, and the mass at its heaviest. */
  WEAK {
    @Override
    double kelvin(Job.Conditions conditions) {
      return conditions.coldest();
    }

    @Override
    double[] load(Travel travel) {
      return travel.heavy();
    }

    @Override
    ChargedSpring charged(Part part, double gasLeft) {
      return part.spring().charged(1 - part.forceTolerance() / part.spring().force(), gasLeft);
    }
  },
  /** Hot, over-filled, new, and the mass at its lightest. */
  STRONG {
    @Override
    double kelvin(Job.Conditions conditions) {
      return conditions.hottest();
    }

    @Override
    double[] load(Travel travel) {
      return travel.light();
    }

    @Override
    ChargedSpring charged(Part part, double gasLeft) {
      return part.spring().charged(1 + part.forceTolerance() / part.spring().force(), 1);
    }
  };

  abstract double kelvin(Job.Conditions conditions);

  abstract double[] load(Travel travel);

  abstract ChargedSpring charged(Part part, double gasLeft);

  /** Share of the gas left at the end of the service. */
  static double gasLeft(Job.Conditions conditions, Part.Wear wear) {
    return wear.gasLeft(conditions.years(), conditions.cyclesPerYear());
  }
}
