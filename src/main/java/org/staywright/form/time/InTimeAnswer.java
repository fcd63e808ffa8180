package org.staywright.form.time;

import static org.staywright.form.schema.AnswerShape.NUMBER;
import static org.staywright.form.schema.AnswerShape.TEXT;
import static org.staywright.form.schema.AnswerShape.numbers;
import static org.staywright.form.schema.AnswerShape.series;
import static org.staywright.form.schema.AnswerShape.shape;
import static org.staywright.form.schema.Field.optional;
import static org.staywright.form.schema.Field.required;

import java.util.List;
import java.util.stream.Stream;
import org.staywright.fit.job.LoadState;
import org.staywright.fit.job.SpringState;
import org.staywright.fit.time.Uncertainties.Source;
import org.staywright.form.schema.Kind.Choice;
import org.staywright.form.schema.Kind.Flag;
import org.staywright.form.schema.Kind.Many;
import org.staywright.form.schema.Shape;

/** Motions and chances as they are sent. */
public final class InTimeAnswer {

  public static final Shape MOTION =
      shape(
          "motion",
          List.of(
              required("travelUnit", Choice.of("deg", "mm")),
              required("endedAt", Choice.of("stop", "rest", "time")),
              required("choked", new Flag())),
          numbers("endTimeS", "endSpeed", "stopEnergyJ", "peakMountLoadN"),
          series("timeS", "travel", "speed", "gasTemperatureC"));

  /** Of a fit in a ranking, where its job asks for something in time. */
  public static final Shape AT_WORST =
      shape(
          "in-time",
          List.of(
              required("whenOneFails", Choice.of("stays", "sinks", "falls")),
              required("choked", new Flag()),
              optional("openingTimeS", NUMBER),
              optional("failedEndTimeS", NUMBER)),
          numbers(
              "stopSpeedMmPerS",
              "stopEnergyJ",
              "peakMountLoadN",
              "failedSpeedMmPerS",
              "failedEnergyJ",
              "failedHandN"),
          List.of(
              required(
                  "requirements",
                  new Many(
                      Shape.of(
                          "kept",
                          required(
                              "code",
                              Choice.of("max-stop-speed", "max-stop-energy", "max-opening-time")),
                          required("most", NUMBER),
                          optional("has", NUMBER),
                          required("unit", TEXT),
                          required("met", new Flag()),
                          required("spring", Choice.of(SpringState.class)),
                          required("load", Choice.of(LoadState.class)))))));

  private static final Shape SHARES =
      shape(
          "shares",
          numbers(Stream.of(Source.values()).map(InTimeJson::code).toArray(String[]::new)));

  public static final Shape CHANCE =
      shape(
          "chance",
          numbers("holds", "handWithinLimit", "staysShut", "holdsStandardError", "draws", "seed"),
          List.of(
              optional("yearsUntilNotHolding", NUMBER),
              optional("yearsUntilOneInTwenty", NUMBER),
              optional("mattersMost", TEXT),
              required("holdShares", SHARES),
              required("handShares", SHARES)));

  private InTimeAnswer() {}
}
