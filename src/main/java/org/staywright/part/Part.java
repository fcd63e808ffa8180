package org.staywright.part;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.staywright.spring.GasFilled;
import org.staywright.spring.LockingSpring;
import org.staywright.spring.Spring;

/**
 * A spring or damper in the stock range. SI.
 *
 * @param number part number, {@code [A-Z0-9-]{4,16}}
 * @param description in the range's own words, null where none was given
 * @param family kind of spring
 * @param finish surface
 * @param spring dimensions and force class, without end fittings
 * @param forceTolerance on F1 either way, N
 * @param ends threads
 * @param damping what sets the speed of a gas spring, null where there is no orifice
 * @param limits of service
 * @param wear gas lost over time and use
 * @param mass kg
 * @param mounting how it wants to hang
 * @param offer price, stock and lead time
 * @param derived names of the figures that were worked out rather than given
 */
public record Part(
    String number,
    @Nullable String description,
    Family family,
    Finish finish,
    Spring spring,
    double forceTolerance,
    Ends ends,
    @Nullable Damping damping,
    Limits limits,
    Wear wear,
    double mass,
    Mounting mounting,
    Offer offer,
    List<String> derived) {

  /**
   * @param rod thread at the rod's end
   * @param tube thread at the tube's end
   */
  public record Ends(String rod, String tube) {}

  /**
   * @param endZone length of the stroke's end damped by oil, 0 for none, m
   * @param orificeDiameter m
   * @param orificeLength m
   * @param compressionFlowFactor orifice area when compressing over that when extending
   * @param wallTimeConstant of the heat exchange between gas and tube, s
   */
  public record Damping(
      double endZone,
      double orificeDiameter,
      double orificeLength,
      double compressionFlowFactor,
      double wallTimeConstant) {}

  /**
   * @param coldest temperature of service, K
   * @param hottest temperature of service, K
   * @param pressure highest absolute gas pressure, Pa; infinite where there is no gas
   */
  public record Limits(double coldest, double hottest, double pressure) {}

  /**
   * @param perYear share of the gas lost in a year
   * @param perCycle share of the gas lost in one cycle
   */
  public record Wear(double perYear, double perCycle) {

    /** Of what holds no gas. */
    public static final Wear NONE = new Wear(0, 0);

    /** Share of the gas left; may come out at or below zero. */
    public double gasLeft(double years, double cyclesPerYear) {
      return 1 - years * perYear - years * cyclesPerYear * perCycle;
    }
  }

  public Part {
    derived = List.copyOf(derived);
  }

  /** The gas in it, empty where something else pushes. */
  public Optional<GasFilled> gas() {
    return spring instanceof GasFilled filled ? Optional.of(filled) : Optional.empty();
  }

  /** The gas it holds under pressure, whether that drives it or only backs a damper's oil. */
  public Optional<GasFilled> charge() {
    return spring.charge();
  }

  /** The spring with its lock, empty where nothing locks. */
  public Optional<LockingSpring> lock() {
    return spring instanceof LockingSpring locking ? Optional.of(locking) : Optional.empty();
  }

  /** Stroke that oil damps at its end, 0 where none does, m. */
  public double endZone() {
    return damping == null ? 0 : damping.endZone();
  }

  /**
   * How long it may lie before the gas it loses takes F1 below its tolerance, years; infinite where
   * it loses none. Pressure is taken to fall as the gas mass does, near enough for a few percent.
   */
  public double shelfYears() {
    return forceTolerance / ((spring.force() + spring.friction()) * wear.perYear());
  }
}
