package org.staywright.spring;

/** A spring or damper in a {@link Cylinder}, which is filled with gas, oil or both. */
public sealed interface Filled extends Spring permits GasFilled, Damper {

  Cylinder cylinder();

  @Override
  default double rodDiameter() {
    return cylinder().rodDiameter();
  }

  @Override
  default double tubeDiameter() {
    return cylinder().tubeDiameter();
  }

  @Override
  default double stroke() {
    return cylinder().stroke();
  }

  @Override
  default double extendedLength() {
    return cylinder().extendedLength();
  }

  @Override
  default double compressedLength() {
    return cylinder().compressedLength();
  }

  @Override
  default double friction() {
    return cylinder().friction();
  }

  @Override
  default double coldFrictionFactor() {
    return cylinder().coldFrictionFactor();
  }

  /** The outermost wall that holds gas or oil in. */
  default ThickTube tube() {
    return cylinder().tube();
  }

  @Override
  default double criticalLoad(double length, double tubeEnd) {
    return SteppedColumn.of(this, length, tubeEnd).criticalLoad();
  }
}
