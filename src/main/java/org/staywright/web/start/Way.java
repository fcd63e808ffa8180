package org.staywright.web.start;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.staywright.part.Coded;
import org.staywright.web.query.JobQuery;
import org.staywright.web.query.ZonesQuery;
import org.staywright.web.shell.PageText;

/**
 * Ways to start, told apart by what moves: each is an invented job with room for its mounts, named
 * by its code as its drawing and its words are.
 */
public enum Way implements Coded {
  HINGE_AT_TOP,
  HINGE_AT_BOTTOM,
  LEVEL_LID,
  OVERHEAD,
  FOLDING_BED,
  UPRIGHT_GUARD,
  LIFT_ON_A_LINE;

  private static final ObjectMapper JSON = new ObjectMapper();

  /** The job with its zones. */
  public JsonNode job() {
    String file = "/ways/" + code() + ".json";
    try (InputStream in = Way.class.getResourceAsStream(file)) {
      return JSON.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + file, e);
    }
  }

  public JobQuery query() {
    return JobQuery.of(job(), "");
  }

  /** Of the bench with the job on it. */
  public String bench() {
    return query().address();
  }

  /** Of the page that finds its mounts. */
  public String mounts() {
    return ZonesQuery.address("/mounts", query());
  }

  public String title() {
    return PageText.text("way." + code());
  }

  public String about() {
    return PageText.text("way." + code() + ".about");
  }
}
