package org.staywright.stock.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.staywright.database.Somebody.ANNA;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.staywright.form.stock.ColumnPlan;
import org.staywright.form.table.RowFault;
import org.staywright.part.Part;
import org.staywright.part.Range;
import org.staywright.spring.GasSpring;
import org.staywright.stock.EmptyStock;
import org.staywright.stock.RevisionDifference;
import org.staywright.stock.SampleRange;
import org.staywright.unit.Fault;

@QuarkusTest
@Tag("server")
@TestProfile(EmptyStock.class)
class ImportsTest extends ImportBench {

  @Test
  void takesTheWholeRangeBackAsItWasExported() throws IOException {
    emptyStock();
    new SampleRange(stock, true).loadIfFirst();
    Range before = current.get();
    String exported = export(1);
    Imports.Outcome again = write(exported, REPLACE);
    assertEquals(
        new Checked.Change(0, 0, before.size() + before.fittings().size(), 0), change(again));

    emptyStock();
    Imports.Outcome fresh =
        imports.write(ANNA, inbox.take(stream(exported), "all.csv"), REPLACE, UNSEEN);
    assertEquals(List.of(), fresh.checked().faults());
    assertEquals(before.size() + before.fittings().size(), fresh.checked().change().added());
    assertEquals(exported, export(stock.newest()));
  }

  @Test
  void derivesWhatAMakersTableLacksAndMarksIt() {
    write(HEADER + ROW, UPDATE);
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertTrue(part.derived().containsAll(List.of("boreDiameterMm", "gasVolumeMl", "frictionN")));
    assertFalse(part.derived().contains("strokeMm"));
    GasSpring spring = (GasSpring) part.spring();
    assertEquals(0.0156, spring.cylinder().boreDiameter(), 1e-9);
    var law = spring.law(1, 1);
    double f2 = law.extending(spring.stroke() - 5e-3, 293.15);
    assertEquals(1.35, f2 / spring.force(), 1e-4);
  }

  @Test
  void halvesFrictionGivenAsTheDifferenceOfTwoForces() {
    String header = HEADER.replace("lead_time_days", "friction_n,lead_time_days");
    String row = ROW.replace("1.35,5", "1.35,38,5");
    write(header + row, new ImportOptions(true, true, Map.of()));
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertEquals(19, part.spring().friction());
    assertTrue(part.derived().contains("frictionN"));
  }

  @Test
  void readsInchesAndPoundsByTheHeader() {
    String header =
        HEADER
            .replace("stroke_mm", "Stroke (in)")
            .replace("extended_length_mm", "extended_length_in")
            .replace("force_class_n", "Force class [lbf]");
    write(header + ROW.replace("160,380,400", "6.25,15,90"), UPDATE);
    Part part = current.get().part("TRY-0001").orElseThrow();
    assertEquals(0.15875, part.spring().stroke(), 1e-12);
    assertEquals(400.339945373, part.spring().force(), 1e-8);
  }

  @Test
  void readsAColumnAsItsMeaningIsChanged() {
    String header = HEADER.replace("stroke_mm", "Hub");
    Fault stroke = check(header + ROW).faults().get(0).fault();
    assertEquals(new Fault("stroke_mm", null, "≥ 20 and ≤ 3000 mm", "missing"), stroke);
    assertEquals(
        2, write(header + ROW, ImportOptions.of("update", "", "Hub=stroke_mm")).revision());
    ImportOptions byPlace = ImportOptions.of("update", "", "#9=stroke_mm");
    assertEquals(new Checked.Change(0, 0, 1, 0), change(write(header + ROW, byPlace)));
  }

  @Test
  void leavesOutAColumnOfNoKnownNameAndSaysSo() {
    String header = HEADER.replace("lead_time_days", "lead_time_days,Shelf");
    Checked checked = check(header + ROW.replace(",5\n", ",5,B12\n"));
    assertEquals(List.of(), checked.faults());
    ColumnPlan.Matched last = checked.columns().get(13);
    assertEquals(new ColumnPlan.Matched("Shelf", null, true), last);
  }

  @Test
  void refusesAMeaningThatIsNone() {
    Inbox.Kept file = inbox.take(stream(HEADER + ROW), "x.csv");
    ImportOptions wrong = ImportOptions.of("", "", "stroke_mm=strokes");
    RowFault fault = onlyFault(imports.check(file, wrong, UNSEEN).checked());
    assertEquals("unknown-column", fault.fault().code());
  }

  @Test
  void showsTheFirstRowsAsTheyAreUnderstood() {
    String header = HEADER.replace("stroke_mm", "stroke_in");
    Checked checked = check(header + ROW.replace(",160,", ",6.25,"));
    Checked.Understood first = checked.preview().get(0);
    assertEquals(2, first.row());
    assertEquals("158.75", first.values().get("stroke_mm"));
    assertEquals("15.6", first.values().get("bore_diameter_mm"));
    assertTrue(first.derived().containsAll(List.of("bore_diameter_mm", "gas_volume_ml")));
  }

  @Test
  void replacesOnlyWhatTheFileHolds() {
    int fittings = current.get().fittings().size();
    int parts = current.get().size();
    Imports.Outcome outcome = write(HEADER + ROW, REPLACE);
    assertEquals(new Checked.Change(1, 0, 0, parts), change(outcome));
    assertEquals(1, current.get().size());
    assertEquals(fittings, current.get().fittings().size());
  }

  @Test
  void keepsWhatAnUpdateDoesNotName() {
    int parts = current.get().size();
    assertEquals(new Checked.Change(1, 0, 0, 0), change(write(HEADER + ROW, UPDATE)));
    String dearer = HEADER + ROW.replace(",5\n", ",9\n");
    assertEquals(new Checked.Change(0, 1, 0, 0), change(write(dearer, UPDATE)));
    assertEquals(parts + 1, current.get().size());
  }

  @Test
  void aDryRunSaysTheSameAndChangesNothing() {
    Checked dry = check(HEADER + ROW);
    assertEquals(1, stock.newest());
    assertEquals(dry.change(), write(HEADER + ROW, REPLACE).checked().change());
  }

  @Test
  void tellsEveryFaultAndKeepsAllInAFile() throws IOException {
    StringBuilder file = new StringBuilder(HEADER);
    for (int i = 0; i < 1500; i++) {
      file.append("TRY-").append(10_000 + i).append(ROW.substring(8).replace(",160,", ",-5,"));
    }
    Inbox.Kept kept = inbox.take(stream(file.toString()), "bad.csv");
    Checked checked = imports.write(ANNA, kept, REPLACE, UNSEEN).checked();
    assertEquals(1500, checked.faultCount());
    assertEquals(1000, checked.faults().size());
    RowFault first = checked.faults().get(0);
    assertEquals(2, first.row());
    assertEquals("stroke_mm", first.fault().where());
    assertEquals("-5", first.fault().value());
    assertEquals(1501, Files.readAllLines(inbox.faults(kept.id()).orElseThrow()).size());
    assertEquals(1, stock.newest());
  }

  @Test
  void readsAWorkbookLikeTheSameTableInCsv() throws IOException {
    Inbox.Kept kept = inbox.take(new ByteArrayInputStream(workbook(s -> {})), "a.xlsx");
    Imports.Outcome outcome = imports.write(ANNA, kept, UPDATE, UNSEEN);
    assertEquals(List.of(), outcome.checked().faults());
    Part fromBook = current.get().part("TRY-0001").orElseThrow();
    assertEquals(new Checked.Change(0, 0, 1, 0), change(write(HEADER + ROW, UPDATE)));
    assertEquals(fromBook, current.get().part("TRY-0001").orElseThrow());
  }

  @Test
  void stopsWhenAskedAndChangesNothing() {
    Inbox.Kept kept = inbox.take(stream(export(1)), "all.csv");
    assertThrows(
        CancellationException.class,
        () -> imports.write(ANNA, kept, REPLACE, (done, total) -> done < total));
    assertEquals(1, stock.newest());
  }

  @Test
  void restoresAnEarlierRevisionAndTellsTheDifference() {
    String first = export(1);
    write(HEADER + ROW, REPLACE);
    RevisionDifference swapped = stock.difference(1, 2);
    assertEquals(1, swapped.added().count());
    assertEquals(List.of("TRY-0001"), swapped.added().first());
    assertEquals(stock.range(1).size(), swapped.gone().count());
    assertEquals(3, stock.restore(ANNA, 1, "revision 1"));
    assertEquals(first, export(3));
    assertEquals(0, stock.difference(1, 3).changed().count());
    assertEquals(first, export(1));
    assertTrue(stock.part("TRY-0001", 2).isPresent());
    assertTrue(stock.part("TRY-0001", 3).isEmpty());
  }

  @Test
  void tellsWhichValuesChanged() {
    write(HEADER + ROW, UPDATE);
    write(HEADER + ROW.replace(",5\n", ",9\n"), UPDATE);
    RevisionDifference difference = stock.difference(2, 3);
    assertEquals(
        List.of(
            new RevisionDifference.Changed(
                "TRY-0001", List.of(new RevisionDifference.Cell("lead_time_days", "5", "9")))),
        difference.changed().first());
  }
}
