package org.staywright.form.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.fit.SampleRange;
import org.staywright.form.Jobs;
import org.staywright.form.Workbooks;
import org.staywright.form.schema.Unreadable;
import org.staywright.part.Range;

class JobFileTest {

  private static final Range RANGE = SampleRange.read();

  private static final String HEADER =
      "name,load.type,load.massKg,load.centreOfMassMm.x,load.centreOfMassMm.y,load.handleMm.x,"
          + "load.handleMm.y,load.opens,load.openingAngleDeg,mounts.frameMm.x,mounts.frameMm.y,"
          + "mounts.movingMm.x,mounts.movingMm.y,springCounts\n";

  private static final String LID =
      "Lid,hinged-flap,18,410,15,800,0,counterclockwise,80,15,-65,360,-11,1;2\n";

  private static JobFile csv(String text) {
    return table(text.getBytes(StandardCharsets.UTF_8));
  }

  private static JobFile table(byte[] file) {
    return JobFile.table(new ByteArrayInputStream(file), RANGE);
  }

  private static JobFile json(String text) {
    return JobFile.json(text.getBytes(StandardCharsets.UTF_8), RANGE);
  }

  private static List<String> faults(JobFile file) {
    return file.faults().stream()
        .map(each -> each.row() + " " + each.fault().where() + " " + each.fault().code())
        .toList();
  }

  @Test
  void aRowOfATableIsTheSameJobAsAnEntryOfAList() {
    JobFile table = csv(HEADER + LID);
    JobFile list = json("[" + Jobs.LEAST.replaceFirst("\\{", "{\"name\": \"Lid\",") + "]");
    assertEquals(List.of(), faults(table));
    assertEquals(List.of(), faults(list));
    assertEquals(2, table.rows().get(0).row());
    assertEquals(1, list.rows().get(0).row());
    assertEquals(
        JobForm.read(list.rows().get(0).document()), JobForm.read(table.rows().get(0).document()));
  }

  @Test
  void aWorkbookHoldsTheVeryJobsOfTheSameTable() {
    String table = HEADER + LID;
    JobFile book = table(Workbooks.of(table));
    assertEquals(List.of(), faults(book));
    assertEquals(csv(table).rows(), book.rows());
    String wrong = HEADER + LID + LID.replace(",18,", ",-18,").replace(",80,", ",\"80,5\",");
    assertEquals(csv(wrong).faults(), table(Workbooks.of(wrong)).faults());
    assertEquals(csv(wrong).rows(), table(Workbooks.of(wrong)).rows());
  }

  @Test
  void aFormulaIsNotTakenForWhatItMayGive() {
    byte[] book = Workbooks.of(HEADER + LID, sheet -> sheet.formula(1, 2, "9*2"));
    assertEquals(List.of("2 load.massKg formula"), faults(table(book)));
  }

  @Test
  void everyFaultIsNamedByRowAndColumn() {
    JobFile file =
        csv(
            HEADER
                + LID
                + LID.replace(",18,", ",-18,").replace(",80,", ",\"80,5\",")
                + LID.replace("hinged-flap", "hatch")
                + LID.replace(",410,", ",,"));
    assertEquals(
        List.of(
            "3 load.massKg out-of-bounds",
            "3 load.openingAngleDeg decimal-comma",
            "4 load.type not-a-choice",
            "5 load.centreOfMassMm.x missing"),
        faults(file).stream().sorted().toList());
    assertEquals(-18.0, ((Number) file.faults().get(0).fault().value()).doubleValue());
    assertEquals(1, file.rows().size());
  }

  @Test
  void aListNamesItsFaultsLikeATable() {
    String wrong = Jobs.LEAST.replace("\"massKg\": 18", "\"massKg\": \"18\"");
    String twice = Jobs.LEAST.replace("\"massKg\": 18", "\"massKg\": 18, \"massKg\": 19");
    assertEquals(
        List.of("3 load.massKg repeated", "2 load.massKg not-a-number"),
        faults(json("[" + String.join(",", Jobs.LEAST, wrong, twice) + "]")));
    assertEquals(List.of("1  not-a-list"), faults(json(Jobs.LEAST)));
    assertThrows(Unreadable.class, () -> json("[{]"));
  }

  @Test
  void whatIsNoSuchFileIsRefusedAtOnce() {
    assertEquals(List.of("1  empty-file"), faults(csv("")));
    assertEquals(List.of("1  list-size"), faults(csv(HEADER)));
    assertEquals(List.of("1  list-size"), faults(json("[]")));
    assertEquals(List.of("1 load.type missing"), faults(csv("name,load.massKg\nLid,18\n")));
    assertEquals(
        List.of("1 name repeated"), faults(csv("name,name,load.type\nLid,Lid,hinged-flap\n")));
    assertEquals(List.of("1  wrong-delimiter"), faults(csv("name;load.type\nLid;hinged-flap\n")));
    assertEquals(List.of("2  too-many-cells"), faults(csv("load.type\nhinged-flap,18\n")));
    byte[] latin =
        "load.type,name\nhinged-flap,Klappe für Öl\n".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals("not-utf8", table(latin).faults().get(0).fault().code());
    assertEquals(
        List.of("not-csv"),
        csv(HEADER + "\"" + LID).faults().stream().map(f -> f.fault().code()).toList());
  }

  @Test
  @Tag("full")
  void tenThousandJobsAreTakenAndOneMoreIsNot() {
    JobFile full = csv(HEADER + LID.repeat(JobFile.MOST));
    assertEquals(0, full.faultCount());
    assertEquals(JobFile.MOST, full.rows().size());
    assertEquals(List.of("1  list-size"), faults(csv(HEADER + LID.repeat(JobFile.MOST + 1))));
  }

  @Test
  void aFloodOfFaultsIsCountedAndCutShort() {
    JobFile file = csv(HEADER + LID.replace(",18,", ",0,").repeat(3000));
    assertEquals(3000, file.faultCount());
    assertEquals(1000, file.faults().size());
  }
}
