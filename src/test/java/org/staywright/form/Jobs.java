package org.staywright.form;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import org.staywright.form.schema.JsonText;

/** A sound job to spoil. */
public final class Jobs {

  public static final String LID =
      """
      {"name": "Floor locker lid",
       "load": {"type": "hinged-flap", "massKg": 18, "massTolerancePercent": 5, "lightestMassKg": null,
                "centreOfMassMm": {"x": 410, "y": 15}, "handleMm": {"x": 800, "y": 0},
                "opens": "counterclockwise", "openingAngleDeg": 80, "tiltDeg": 0,
                "hingeFrictionNm": 0.5, "inertiaKgM2": null},
       "mounts": {"frameMm": {"x": 15, "y": -65}, "movingMm": {"x": 360, "y": -11}, "rodEndAt": "either"},
       "springCounts": [1, 2],
       "fittings": {"rodEnd": "ball-socket", "tubeEnd": "ball-socket"},
       "conditions": {"minC": -10, "nominalC": 20, "maxC": 40, "serviceYears": 5, "cyclesPerYear": 1000},
       "requirements": {"maxHandForceN": 50, "minHoldRatio": 1.1, "compressedReserveMm": 5,
                        "extendedReserveMm": 4, "openStop": "flap-stop", "staysShut": false},
       "filters": {"families": ["gas-spring"], "finish": null, "inStockOnly": false},
       "rankBy": "balanced", "limit": 20}
      """;

  /** Only what is required. */
  public static final String LEAST =
      """
      {"load": {"type": "hinged-flap", "massKg": 18, "centreOfMassMm": {"x": 410, "y": 15},
                "handleMm": {"x": 800, "y": 0}, "opens": "counterclockwise", "openingAngleDeg": 80},
       "mounts": {"frameMm": {"x": 15, "y": -65}, "movingMm": {"x": 360, "y": -11}}}
      """;

  /** A serving window that slides straight up. */
  public static final String LIFT =
      """
      {"load": {"type": "straight-lift", "massKg": 14, "lightestMassKg": 13, "massTolerancePercent": 2,
                "travelMm": 200, "directionDeg": 90, "frictionN": 10},
       "mounts": {"frameMm": {"x": 40, "y": 0}, "movingMm": {"x": 100, "y": 460}},
       "conditions": {"minC": 5, "maxC": 35, "serviceYears": 3, "cyclesPerYear": 500},
       "requirements": {"maxHandForceN": 190, "minHoldRatio": 1}}
      """;

  public static final String PROFILE =
      """
      {"load": {"type": "force-profile",
                "points": [{"lengthMm": 400, "forceN": 385}, {"lengthMm": 490, "forceN": 332},
                           {"lengthMm": 550, "forceN": 275.5}]},
       "conditions": {"minC": 5, "maxC": 35, "serviceYears": 3, "cyclesPerYear": 500},
       "requirements": {"maxHandForceN": 190, "minHoldRatio": 1}}
      """;

  private Jobs() {}

  public static ObjectNode lid() {
    return tree(LID);
  }

  public static ObjectNode tree(String json) {
    return (ObjectNode) JsonText.read(json.getBytes(StandardCharsets.UTF_8)).tree();
  }
}
