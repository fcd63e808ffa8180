package org.staywright.document;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.staywright.document.job.JobSheet;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.PartsListXlsx;
import org.staywright.job.Chosen;
import org.staywright.job.Orders;
import org.staywright.job.order.PartsList;

/** Documents of an order: a list of 200 springs, and the job sheet of one lid. One thread. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class OrderBench {

  private final PartsList list = Orders.ofLines(Stocked.RANGE, 200);
  private final Chosen lid = Orders.lid("Floor locker lid", Stocked.RANGE);
  private final PartsList own = Orders.list(lid);

  @Benchmark
  public byte[] listOnPaper() {
    return PartsListPdf.of(list, Stocked.ENGLISH);
  }

  @Benchmark
  public byte[] listAsWorkbook() {
    return PartsListXlsx.of(list, Stocked.ENGLISH);
  }

  @Benchmark
  public byte[] jobSheet() {
    return JobSheet.pdf(lid, own, Stocked.ENGLISH);
  }
}
