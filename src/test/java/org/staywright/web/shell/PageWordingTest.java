package org.staywright.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.staywright.fit.assess.Figure;
import org.staywright.fit.job.Criterion;
import org.staywright.fit.job.Job;
import org.staywright.fit.job.RankBy;
import org.staywright.fit.job.Rejection;
import org.staywright.fit.job.Term.Sense;
import org.staywright.fit.mounts.Obstacle;
import org.staywright.fit.time.TimeFigures;
import org.staywright.fit.time.Uncertainties;
import org.staywright.form.job.CentreForm;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.job.ConditionKnobs;
import org.staywright.form.job.JobKnobs;
import org.staywright.form.job.JobShape;
import org.staywright.form.replace.MeasuredForm;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.mechanism.ForceProfile;
import org.staywright.mechanism.Mounts;
import org.staywright.motion.Motion;
import org.staywright.part.Coded;
import org.staywright.web.query.Bench;
import org.staywright.web.query.InTimeQuery;
import org.staywright.web.start.Way;
import org.staywright.wording.WordingFiles;

/** The sentences of the pages: each that is asked for is there, and none lies idle. */
class PageWordingTest {

  private static final List<String> TOPICS =
      List.of(
          "bench",
          "chance",
          "compare",
          "field",
          "fit",
          "group",
          "ideal",
          "job",
          "jobs",
          "mounts",
          "option",
          "order",
          "page",
          "part",
          "played",
          "profile",
          "ranking",
          "rejected",
          "row",
          "saved",
          "search",
          "seat",
          "sideview",
          "start",
          "time",
          "verdict",
          "way",
          "why");

  /** The files of these topics. */
  private static final List<String> FILES =
      List.of(
          "bench",
          "compare",
          "field",
          "fit",
          "ideal",
          "job",
          "mounts",
          "order",
          "page",
          "part",
          "saved",
          "seat",
          "sideview",
          "start",
          "time",
          "way");

  private static final List<String> FIGURES_IN_TIME =
      List.of(
          "opening-time",
          "stop-speed",
          "stop-energy",
          "peak-load",
          "holds",
          "hand-within",
          "stays-shut",
          "years",
          "years-early",
          "matters-most");

  /** Fields of which there is more to know than their label says. */
  private static final List<String> ABOUT_FIELDS =
      List.of(
          "load.directionDeg",
          "load.points",
          "load.heightTravelMm",
          "requirements.minHoldOpenN",
          "requirements.maxBounceMm",
          "fittings.tubeEnd");

  /** What is missed below zero in other words. */
  private static final Criterion[] BELOW_ZERO = {
    Criterion.HOLD_OPEN,
    Criterion.STAYS_SHUT,
    Criterion.STAYS_PUT,
    Criterion.ONE_FAILED,
    Criterion.NO_GAIN
  };

  /** What never comes to a figure in words of its own. */
  private static final Figure[] NEVER = {
    Figure.HOLD_RATIO_OPEN, Figure.END_SPEED, Figure.LIFT_TO_HANG
  };

  /** A key written out, in a template or in code. */
  private static final Pattern KEY =
      Pattern.compile("[\"'](?:" + String.join("|", TOPICS) + ")\\.[a-z0-9.-]*[a-z0-9][\"']");

  /** What papers say of a part too, by its codes. */
  private static final Pattern OF_PART =
      Pattern.compile("part\\.(family|figure|finish|fitting|label|locking|mounting)(\\..*)?");

  @Test
  void everyKeyAskedForIsThereAndNoneLiesIdle() throws IOException {
    assertEquals(Set.of(), without(asked(), written()), "asked for and not there");
    Set<String> idle = without(written(), asked());
    idle.removeIf(key -> OF_PART.matcher(key).matches());
    assertEquals(Set.of(), idle, "there and not asked for");
  }

  private static Set<String> without(Set<String> some, Set<String> others) {
    Set<String> left = new TreeSet<>(some);
    left.removeAll(others);
    return left;
  }

  private static Set<String> asked() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (String folder : List.of("src/main/resources/templates", "src/main/java")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          Matcher key = KEY.matcher(Files.readString(file));
          while (key.find()) {
            keys.add(key.group().substring(1, key.group().length() - 1));
          }
        }
      }
    }
    for (Bench bench : Bench.values()) {
      keys.add("bench.kind." + bench.name().toLowerCase(Locale.ROOT));
    }
    codes("fit.rejection.", Rejection.values(), keys);
    codes("fit.blocker.", Criterion.values(), keys);
    codes("fit.blocker.below.", BELOW_ZERO, keys);
    codes("fit.criterion.", Criterion.values(), keys);
    codes("fit.criterion.", Sense.values(), keys);
    keys.addAll(List.of("fit.criterion.boundless.more", "fit.criterion.boundless.less"));
    codes("fit.figure.", Figure.values(), keys);
    for (Figure figure : Figure.values()) {
      keys.add("fit.figure." + figure.codeBelowZero());
    }
    codes("fit.figure.never.", NEVER, keys);
    for (String path : ConditionKnobs.paths()) {
      keys.add("fit.holds-from" + path.replace('/', '.'));
    }
    for (String path : JobKnobs.paths()) {
      String key = "fit.change" + path.replace('/', '.');
      if (path.startsWith("/fittings")) {
        keys.add(key);
      }
      if (path.startsWith("/mounts") || path.equals("/springCounts")) {
        keys.addAll(List.of(key + ".more", key + ".less"));
      } else if (path.matches("/requirements/(max|rises).*|/load/sitterMassKg/min")) {
        keys.add(key + ".more");
      } else if (!path.startsWith("/fittings")) {
        keys.add(key + ".less");
      }
    }
    for (String never :
        List.of("rises", "over-centre", "stop-speed", "stop-energy", "opening-time")) {
      keys.add("fit.blocker.never." + never);
    }
    codes("mounts.obstacle.", Obstacle.Code.values(), keys);
    codes("fit.rank-by.", RankBy.values(), keys);
    codes("option.", Job.OpenStop.values(), keys);
    codes("option.", Mounts.RodEnd.values(), keys);
    keys.addAll(List.of("option.counterclockwise", "option.clockwise"));
    fields("field.", JobShape.JOB, keys);
    fields("field.", ChoiceForm.SHAPE, keys);
    fields("field.", MeasuredForm.MEASURED, keys);
    fields("field.", CentreForm.SHAPE, keys);
    codes("group.", JobShape.Section.values(), keys);
    codes("group.", InTimeQuery.Section.values(), keys);
    for (String code : List.of("behaviour", "weights", "spreads")) {
      keys.add("group." + code + ".about");
    }
    for (String name : ABOUT_FIELDS) {
      keys.add("field." + name + ".about");
    }
    codes("way.", Way.values(), keys);
    for (Way way : Way.values()) {
      keys.add("way." + way.code() + ".about");
    }
    fields("field.", InTimeQuery.shape(ForceProfile.CODE), keys);
    keys.addAll(List.of("option.from-open", "option.from-closed"));
    keys.addAll(List.of("option.lets-go", "option.pushes-on"));
    codes("played.end.", Motion.End.values(), keys);
    codes("time.failing.", TimeFigures.Failing.values(), keys);
    codes("time.end.", Motion.End.values(), keys);
    for (String code : List.of("max-stop-speed", "max-stop-energy", "max-opening-time")) {
      keys.addAll(List.of("time.kept." + code, "time.kept." + code + ".missed"));
    }
    keys.addAll(List.of("time.opening", "time.failing"));
    for (Uncertainties.Source source : Uncertainties.Source.values()) {
      keys.add("time.source." + source.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }
    for (String way : List.of("closing", "opening")) {
      for (String pace : List.of("slow", "easing", "slam")) {
        keys.add("time.figure." + way + "-" + pace);
      }
    }
    for (String place : List.of("low", "middle", "high")) {
      keys.add("seat.locked." + place);
    }
    for (String name : List.of("open", "give", "locked", "stiffness")) {
      keys.addAll(List.of("seat.chart." + name, "seat.chart." + name + ".about"));
    }
    keys.remove("seat.chart.locked.about");
    for (String name : FIGURES_IN_TIME) {
      keys.add("time.figure." + name);
    }
    for (int status : new int[] {400, 403, 404, 422, 429, 500, 503}) {
      keys.add("page.error." + status);
      keys.add("page.error." + status + ".advice");
    }
    return keys;
  }

  private static void codes(String prefix, Enum<?>[] constants, Set<String> keys) {
    for (Enum<?> constant : constants) {
      keys.add(
          prefix
              + (constant instanceof Coded coded
                  ? coded.code()
                  : constant.name().toLowerCase(java.util.Locale.ROOT)));
    }
  }

  private static void fields(String prefix, Shape shape, Set<String> keys) {
    shape
        .fields()
        .forEach(
            (name, field) -> {
              keys.add(prefix + name);
              if (field.kind() instanceof Shape inner) {
                fields(prefix + name + ".", inner, keys);
              } else if (field.kind() instanceof Kind.Variants variants) {
                variants.shapes().forEach(inner -> fields(prefix + name + ".", inner, keys));
              } else if (field.kind() instanceof Kind.Many many
                  && many.of() instanceof Shape inner) {
                fields(prefix + name + ".", inner, keys);
              }
            });
  }

  /** With what is said of one mechanism or family alone by its plain key. */
  private static Set<String> written() throws IOException {
    Set<String> keys = new TreeSet<>();
    for (String file : FILES) {
      keys.addAll(keys(file));
    }
    for (String code : WordingFiles.ofKinds()) {
      for (String key : keys(code)) {
        keys.add(key.substring(0, key.length() - code.length() - 1));
      }
    }
    keys.removeIf(key -> !TOPICS.contains(key.split("\\.")[0]));
    return keys;
  }

  private static Set<String> keys(String file) throws IOException {
    Properties properties = new Properties();
    try (Reader in = Files.newBufferedReader(WordingFiles.first().get(file))) {
      properties.load(in);
    }
    return properties.stringPropertyNames();
  }
}
