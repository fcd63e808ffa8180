package org.staywright.web.shell;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Metrics;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.function.Supplier;
import org.staywright.job.batch.Batches;
import org.staywright.job.task.Tasks;
import org.staywright.part.Range;
import org.staywright.stock.CurrentRange;
import org.staywright.stock.intake.Imports;

/** What the program tells of itself beside what its server tells: figures of the trade. */
@ApplicationScoped
public class ProgramMetrics {

  private final CurrentRange current;
  private final Tasks tasks;
  private final Batches batches;
  private final MeterRegistry registry;

  ProgramMetrics(CurrentRange current, Tasks tasks, Batches batches, MeterRegistry registry) {
    this.current = current;
    this.tasks = tasks;
    this.batches = batches;
    this.registry = registry;
  }

  void onStart(@Observes StartupEvent started) {
    Gauge.builder("staywright.range.revision", current, c -> last(c, Range::revision))
        .register(registry);
    Gauge.builder("staywright.range.parts", current, c -> last(c, Range::size)).register(registry);
    Gauge.builder("staywright.tasks.open", tasks, Tasks::open).register(registry);
    FunctionCounter.builder("staywright.batch.jobs", batches, Batches::judged).register(registry);
  }

  /**
   * Of the columns as they stand in memory: a question for figures asks nothing of the database.
   */
  private static double last(CurrentRange current, Figure figure) {
    return current.last().map(figure::of).orElse(0);
  }

  private interface Figure {
    int of(Range range);
  }

  /** Times a ranking of the whole range. */
  public static <T> T ranking(Supplier<T> ranking) {
    return Metrics.timer("staywright.ranking").record(ranking);
  }

  /** Counts a file of stock by what came of it. */
  public static Imports.Outcome imported(Imports.Outcome outcome) {
    String result =
        outcome.revision() > 0 ? "written" : outcome.checked().clean() ? "tried" : "refused";
    Metrics.counter("staywright.imports", "outcome", result).increment();
    return outcome;
  }

  /** Counts a failure that nobody foresaw. */
  public static void unforeseen() {
    Metrics.counter("staywright.unforeseen").increment();
  }
}
