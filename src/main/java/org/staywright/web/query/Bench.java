package org.staywright.web.query;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.staywright.form.job.JobShape;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.HingedFlap;
import org.staywright.mechanism.SeatColumn;
import org.staywright.mechanism.StraightLift;
import org.staywright.web.shell.PageText;
import org.staywright.wording.Wording;

/** The pages on which a job is described, one for each mechanism. */
public enum Bench {
  FLAP(HingedFlap.CODE),
  LIFT(StraightLift.CODE),
  PROFILE(ForceProfile.CODE),
  SEAT(SeatColumn.CODE);

  private final String type;
  private final Shape shape;

  Bench(String type) {
    this.type = type;
    this.shape = JobShape.of(type);
  }

  /** For a type of load; a flap for a word that is none. */
  static Bench of(String type) {
    return Stream.of(values()).filter(bench -> bench.type.equals(type)).findFirst().orElse(FLAP);
  }

  /** The type of load, as a job says it. */
  public String type() {
    return type;
  }

  /** Address of its page. */
  public String path() {
    return "/" + name().toLowerCase(Locale.ROOT);
  }

  /** Address that the files of its charts stand below. */
  public String charts() {
    return path() + "/fit";
  }

  /** All of them, in the order of the page. */
  public List<Bench> all() {
    return List.of(values());
  }

  /** Its name among the others. */
  public String kind() {
    return PageText.text("bench.kind." + name().toLowerCase(Locale.ROOT));
  }

  /** Whether a hand moves the load. */
  public boolean handMoves() {
    return this != SEAT;
  }

  /** The job that its page opens with: nobody starts from empty fields. */
  public JobQuery opening() {
    try (InputStream in = Bench.class.getResourceAsStream("/jobs" + path() + ".json")) {
      return JobQuery.of(new ObjectMapper().readTree(in), "");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A sentence in the words of its mechanism. */
  public String say(String key) {
    return wording().text(key);
  }

  /** The fields of its jobs. */
  public Shape shape() {
    return shape;
  }

  public Wording wording() {
    return PageText.wording().about(type);
  }
}
