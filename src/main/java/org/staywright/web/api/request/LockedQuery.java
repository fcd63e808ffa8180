package org.staywright.web.api.request;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.staywright.part.Coded;
import org.staywright.part.Family;
import org.staywright.part.Part;
import org.staywright.spring.LockedCurve;
import org.staywright.spring.LockedSpring;
import org.staywright.spring.LockingSpring;
import org.staywright.unit.Fault;
import org.staywright.unit.Refusal;
import org.staywright.unit.Unit;

/** The locked curve that a query asks of a part; what the spring refuses is named by parameter. */
public final class LockedQuery {

  private static final Map<String, String> PARAMETERS =
      Map.of("compression", "atCompressionMm", "deflection", "deflectionMm");

  private LockedQuery() {}

  public static LockedCurve curve(Part part, JsonNode query) {
    LockingSpring spring = part.lock().orElseThrow(() -> doesNotLock(part));
    try {
      LockedSpring locked =
          spring.locked(
              si(query, "atCompressionMm"), Unit.CELSIUS.si(number(query, "temperatureC")));
      return LockedCurve.of(locked, si(query, "deflectionMm"), query.get("samples").intValue());
    } catch (Refusal refused) {
      throw BadQuery.uncomputable(
          refused.faults().stream().map(fault -> named(fault, query)).toList());
    }
  }

  private static RuntimeException doesNotLock(Part part) {
    String families =
        Stream.of(Family.values())
            .filter(Family::locks)
            .map(Coded::code)
            .collect(Collectors.joining(", "));
    return BadQuery.uncomputable(
        List.of(new Fault("partNumber", part.number(), families, "does-not-lock")));
  }

  /** With the value as it was typed. */
  private static Fault named(Fault fault, JsonNode query) {
    String parameter = PARAMETERS.get(fault.where());
    return new Fault(parameter, query.get(parameter).numberValue(), fault.bound(), fault.code());
  }

  private static double si(JsonNode query, String name) {
    return Unit.MILLIMETRE.si(number(query, name));
  }

  private static double number(JsonNode query, String name) {
    return query.get(name).doubleValue();
  }
}
