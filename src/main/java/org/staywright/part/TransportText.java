package org.staywright.part;

/**
 * The texts that except articles acting as shock absorbers or pneumatic springs from the rules for
 * dangerous goods. The figures of ADR were read; that the others state the same is from memory
 * ({@code shared/regulations.csv}).
 */
public enum TransportText implements Coded {
  /** Road: ADR 2023, 3.3.1, special provision 283. */
  ADR,
  /** Sea: IMDG Code, 3.3.1, special provision 283. */
  IMDG,
  /** Air: ICAO Technical Instructions, special provision A114. */
  ICAO,
  /** USA: 49 CFR 173.306(f)(4). */
  US;

  /** True where its figures were read, not remembered. */
  public boolean seen() {
    return this == ADR;
  }
}
