package org.staywright.web.replace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.staywright.web.query.ReplaceQuery;

/** What is asked about an old spring, and in which order. */
final class ReplaceQuestions {

  /** One question after the other; fields of each by their dotted names. */
  static final Map<String, List<String>> ALL = new LinkedHashMap<>();

  static {
    ALL.put("label", List.of(ReplaceQuery.LABEL));
    ALL.put("thickness", List.of("rodDiameterMm", "tubeDiameterMm"));
    ALL.put(
        "length",
        List.of(
            "extendedLengthMm",
            "extendedLengthMm.measured",
            "tubeLengthMm",
            "exposedRodMm",
            "strokeMm",
            "compressedLengthMm",
            "compressedLengthMm.measured"));
    ALL.put("ends", List.of("rodEnd", "tubeEnd", "ballDiameterMm", "rodThread"));
    ALL.put("place", List.of("centresClosedMm", "centresOpenMm", "handleTravelMm"));
    ALL.put("force", List.of("printedForce.value", "printedForce.unit"));
    ALL.put(
        "flap",
        List.of(
            "flap.propped",
            "flap.frameMountMm",
            "flap.movingMountMm",
            "flap.closedSlopeDeg",
            "flap.openSlopeDeg",
            "flap.handleMm",
            "flap.unit",
            "flap.first.force",
            "flap.first.slopeDeg",
            "flap.second.force",
            "flap.second.slopeDeg",
            "flap.risesFromDeg"));
    ALL.put(
        "scale",
        List.of(
            "scaleReading.force",
            "scaleReading.unit",
            "scaleReading.atCompressionMm",
            "scaleReading.temperatureC",
            "scaleReading.direction",
            "madeIn"));
    ALL.put("rest", List.of("springCount", "finish", "damping"));
  }

  /** The way to a force that nobody knows, step by step. */
  static final Map<String, List<String>> SURVEY = new LinkedHashMap<>();

  static {
    SURVEY.put("prop", List.of("flap.propped", "springCount"));
    SURVEY.put(
        "mounts",
        List.of("flap.frameMountMm", "flap.movingMountMm", "centresOpenMm", "centresClosedMm"));
    SURVEY.put("slopes", List.of("flap.closedSlopeDeg", "flap.openSlopeDeg"));
    SURVEY.put(
        "hook",
        List.of(
            "flap.handleMm",
            "flap.unit",
            "flap.first.force",
            "flap.first.slopeDeg",
            "flap.second.force",
            "flap.second.slopeDeg"));
    SURVEY.put("rises", List.of("flap.risesFromDeg"));
  }

  private ReplaceQuestions() {}
}
