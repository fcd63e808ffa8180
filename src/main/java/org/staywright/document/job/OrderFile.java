package org.staywright.document.job;

import java.util.List;
import java.util.function.BiFunction;
import org.staywright.document.order.OrderLines;
import org.staywright.document.order.PartsListAnswer;
import org.staywright.document.order.PartsListCsv;
import org.staywright.document.order.PartsListPdf;
import org.staywright.document.order.PartsListXlsx;
import org.staywright.document.order.QuotationRequest;
import org.staywright.job.Chosen;
import org.staywright.job.order.PartsList;
import org.staywright.wording.Wording;

/** A file that tells what to order. */
public enum OrderFile {
  PDF("parts-list.pdf", Type.PDF, PartsListPdf::of),
  XLSX("parts-list.xlsx", Type.XLSX, PartsListXlsx::of),
  CSV("parts-list.csv", Type.CSV, PartsListCsv::of),
  JSON("parts-list.json", Type.JSON, PartsListAnswer::of),
  QUOTATION("quotation-request.pdf", Type.PDF, QuotationRequest::pdf),
  SHEET(
      "job-sheet.pdf", Type.PDF, (jobs, list, wording) -> JobSheet.pdf(jobs.get(0), list, wording)),
  LINES("order-lines.txt", Type.TEXT, OrderLines::of);

  /** Offered for one job, what is wanted most being the first. */
  public static final List<OrderFile> OF_ONE = List.of(PDF, XLSX, CSV, JSON, QUOTATION, SHEET);

  /** Offered for several jobs together. */
  public static final List<OrderFile> OF_SEVERAL = List.of(CSV, XLSX, PDF, QUOTATION, LINES, JSON);

  /** Media types, for whoever serves them. */
  public static final class Type {

    public static final String PDF = "application/pdf";
    public static final String XLSX =
        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    public static final String CSV = "text/csv;charset=UTF-8";
    public static final String TEXT = "text/plain;charset=UTF-8";
    public static final String JSON = "application/json";

    private Type() {}
  }

  private interface Writing {
    Object of(List<Chosen> jobs, PartsList list, Wording wording);
  }

  private final String file;
  private final String type;
  private final Writing writing;

  OrderFile(String file, String type, BiFunction<PartsList, Wording, Object> writing) {
    this(file, type, (jobs, list, wording) -> writing.apply(list, wording));
  }

  OrderFile(String file, String type, Writing writing) {
    this.file = file;
    this.type = type;
    this.writing = writing;
  }

  /** Its name, as in addresses. */
  public String file() {
    return file;
  }

  /** Its name on a disk among those of other jobs. */
  public String file(String job) {
    return file.replace(".", "-" + job + ".");
  }

  public String type() {
    return type;
  }

  /** Whether it is looked at rather than kept. */
  public boolean shown() {
    return type.equals(Type.PDF);
  }

  /** What it is called where it is offered. */
  public String title(Wording wording) {
    return wording.text("document.file." + file);
  }

  /**
   * What stands in it: bytes, a text or JSON.
   *
   * @param list of what all the jobs need
   */
  public Object of(List<Chosen> jobs, PartsList list, Wording wording) {
    return writing.of(jobs, list, wording);
  }
}
