package org.staywright.spring;

import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/**
 * A cylindrical compression spring of round wire on a telescoping guide with threaded ends, so that
 * it goes between mounts like a gas spring.
 *
 * <p>Source: EN 13906-1:2013, cold coiled, ends closed and ground. Its equations are from memory
 * where a line says so; the others agree with a public program after the standard.
 *
 * @param rodDiameter of the guide inside the coil, m
 * @param tubeDiameter outside of the coil, m
 * @param wireDiameter d, m
 * @param activeCoils n
 * @param freeLength L0: of the coil without load, m
 * @param shearModulus G of the wire at 20 °C, Pa
 * @param tensileStrength R_m of the wire, Pa
 * @param stroke of the unit, m
 * @param extendedLength of the unit without end fittings, m
 * @param compressedLength of the unit without end fittings, m
 * @param force pushing, extending, 5 mm before full extension, 20 °C, preload counted in, N
 * @param friction of the guide, N
 */
public record CoilSpring(
    double rodDiameter,
    double tubeDiameter,
    double wireDiameter,
    double activeCoils,
    double freeLength,
    double shearModulus,
    double tensileStrength,
    double stroke,
    double extendedLength,
    double compressedLength,
    double force,
    double friction)
    implements Spring {

  /** Shear modulus of patented drawn wire after EN 10270-1, Pa (EN 13906-1, Table 1). */
  public static final double DRAWN_WIRE = 81.5e9;

  /** E/G of the same wire, 206/81.5: taken for every steel. */
  private static final double YOUNG_OVER_SHEAR = 206 / 81.5;

  /** Permissible shear stress when solid over tensile strength (EN 13906-1, from memory). */
  private static final double PERMISSIBLE = 0.56;

  /** The modulus falls by 7 % over 250 K (EN 13906-1, Fig. 4). */
  private static final double SOFTENING = 0.07 / 250;

  /** Seating of ends that a guide keeps parallel (EN 13906-1, Fig. 5). */
  public static final double SEATING = 0.5;

  /** Coils at the ends that do not give: closed and ground (EN 13906-1, from memory). */
  private static final double DEAD_COILS = 2;

  /** D: from wire centre to wire centre, m. */
  public double coilDiameter() {
    return tubeDiameter - wireDiameter;
  }

  /** w = D/d. */
  public double index() {
    return coilDiameter() / wireDiameter;
  }

  /** R = G·d⁴/(8·D³·n), N/m. */
  public double rate() {
    return shearModulus
        * Math.pow(wireDiameter, 4)
        / (8 * Math.pow(coilDiameter(), 3) * activeCoils);
  }

  /** τ = 8·D·F/(π·d³), for a load that rests, Pa. */
  public double stress(double load) {
    return 8 * coilDiameter() * load / (Math.PI * Math.pow(wireDiameter, 3));
  }

  /** k = (w + 0.5)/(w − 0.75), Bergsträsser: for a load that swings. */
  public double correction() {
    return (index() + 0.5) / (index() - 0.75);
  }

  /** τ_k = k·τ, Pa. */
  public double correctedStress(double load) {
    return correction() * stress(load);
  }

  /** τ_zul = 0.56·R_m, Pa. */
  public double permissibleStress() {
    return PERMISSIBLE * tensileStrength;
  }

  /** L_c = (n + 2)·d: all coils touch, m. */
  public double solidLength() {
    return (activeCoils + DEAD_COILS) * wireDiameter;
  }

  /** S_a = n·(0.0015·D²/d + 0.1·d): gaps that must stay (from memory), m. */
  public double leastGaps() {
    double each = 0.0015 * coilDiameter() * coilDiameter() / wireDiameter + 0.1 * wireDiameter;
    return activeCoils * each;
  }

  /** τ_c: when pressed solid, Pa. */
  public double solidStress() {
    return stress(rate() * (freeLength - solidLength()));
  }

  /** How far the coil is compressed at full extension of the unit, m. */
  public double preload() {
    return (force + friction) / rate() - GAUGE_POINT;
  }

  /** The stroke that leaves the least gaps, m; a coil with more stroke would go solid. */
  public double usableStroke() {
    return freeLength - preload() - solidLength() - leastGaps();
  }

  /**
   * s_K = L0·0.5/(1 − G/E)·[1 − √(1 − (1 − G/E)/(0.5 + G/E)·(π·D/(ν·L0))²)]: deflection at which it
   * buckles; infinite where it never does, m.
   *
   * @param seating ν of its ends: 0.5 both held parallel, 1 both pinned, 2 one of them free
   */
  public double bucklingDeflection(double seating) {
    double ratio = 1 / YOUNG_OVER_SHEAR;
    double slender = Math.PI * coilDiameter() / (seating * freeLength);
    double under = 1 - (1 - ratio) / (0.5 + ratio) * slender * slender;
    double deflection = freeLength * 0.5 / (1 - ratio) * (1 - Math.sqrt(under));
    return under < 0 || deflection > freeLength ? Double.POSITIVE_INFINITY : deflection;
  }

  /** The guide's help against buckling is left out: R·s_K. */
  @Override
  public double criticalLoad(double length, double tubeEnd) {
    return rate() * bucklingDeflection(SEATING);
  }

  @Override
  public double coldFrictionFactor() {
    return 1;
  }

  /** Refused for a coil that would go solid; it has no gas to lose. */
  @Override
  public ForceLaw law(double forceFactor, double gasFraction) {
    if (stroke > usableStroke()) {
      double most = Unit.MILLIMETRE.of(usableStroke());
      throw new Refusal(
          new Fault("stroke", Unit.MILLIMETRE.of(stroke), "≤ " + most + " mm", "coil-solid"));
    }
    double rate = forceFactor * rate();
    return new LinearLaw(this, rate * preload(), rate, SOFTENING);
  }

  @Override
  public <T> T told(Kinds<T> kinds) {
    return kinds.coil(this);
  }
}
