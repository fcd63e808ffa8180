package org.staywright.document;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.staywright.Effort;
import org.staywright.fit.assess.Fit;
import org.staywright.fit.ideal.Ideal;
import org.staywright.fit.job.Job;
import org.staywright.fit.rank.Ranking;
import org.staywright.form.job.JobForm;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.wording.Wording;

/**
 * A start card or a sample job in which a hand moves the load, with the best of the range.
 *
 * @param name of its file, or of the job
 * @param json of the job
 */
public record Sampled(String name, String json, Job job, Fit fit) {

  private static final List<Sampled> ALL = read();

  private static final Map<String, Chosen> CHOSEN = new ConcurrentHashMap<>();
  private static final Map<String, Ideal> IDEAL = new ConcurrentHashMap<>();

  public static List<Sampled> all() {
    return ALL;
  }

  /** Every third, or all with all checks. */
  public static List<Sampled> some() {
    int step = Effort.of(1, 3);
    return IntStream.range(0, ALL.size()).filter(i -> i % step == 0).mapToObj(ALL::get).toList();
  }

  public static Sampled of(String name) {
    return ALL.stream().filter(each -> each.name.equals(name)).findFirst().orElseThrow();
  }

  private static Sampled of(String name, JsonNode json) {
    Job job = JobForm.read(JobForm.withDefaults((ObjectNode) json));
    return new Sampled(name, json.toString(), job, Ranking.of(Stocked.RANGE, job).fits().get(0));
  }

  private static List<Sampled> read() {
    List<Sampled> all = new ArrayList<>();
    try (DirectoryStream<Path> ways =
        Files.newDirectoryStream(Path.of("src/main/resources/ways"))) {
      for (Path way : ways) {
        all.add(of(way.getFileName().toString().replace(".json", ""), tree(way)));
      }
      for (JsonNode job : tree(Path.of("catalog-data/sample-jobs.json"))) {
        if (!job.at("/load/type").textValue().equals("seat-column")) {
          all.add(of(job.get("name").textValue(), job));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    all.sort(Comparator.comparing(Sampled::name));
    return List.copyOf(all);
  }

  private static JsonNode tree(Path file) throws IOException {
    return JsonText.read(Files.readAllBytes(file)).tree();
  }

  /** With the best of the range chosen for it. */
  public Chosen chosen() {
    return CHOSEN.computeIfAbsent(name, any -> Orders.best(json, Stocked.RANGE));
  }

  Ideal ideal() {
    return IDEAL.computeIfAbsent(name, any -> Ideal.of(job, Stocked.RANGE));
  }

  public Wording words(Wording wording) {
    return wording.about(job.mechanism().code());
  }

  @Override
  public String toString() {
    return name;
  }
}
