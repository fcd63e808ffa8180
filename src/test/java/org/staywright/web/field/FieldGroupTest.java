package org.staywright.web.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.staywright.form.job.JobShape;
import org.staywright.form.job.JobShape.Section;
import org.staywright.form.schema.Field;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;
import org.staywright.unit.Bound;
import org.staywright.unit.Fault;
import org.staywright.web.query.Bench;
import org.staywright.wording.Wording;

/** The groups of a form, from its shape alone. */
class FieldGroupTest {

  @Test
  void everyFieldThatAPageBringsUpToDateStandsInJustOneGroup() {
    for (Bench bench : Bench.values()) {
      FormFields form = form(bench.shape(), List.of());
      List<String> grouped = new ArrayList<>();
      form.groups().forEach(group -> group.members().forEach(member -> grouped.add(member.name())));
      TreeSet<String> points = new TreeSet<>(grouped);
      assertEquals(points.size(), grouped.size(), bench + " asks twice");
      List<String> all =
          form.all().stream().map(Input::name).filter(name -> !axisOf(name, points)).toList();
      assertEquals(new TreeSet<>(all), points, bench.toString());
    }
  }

  private static boolean axisOf(String name, TreeSet<String> points) {
    return (name.endsWith(".x") || name.endsWith(".y"))
        && points.contains(name.substring(0, name.length() - 2));
  }

  @Test
  void aFieldThatIsAddedToTheShapeShowsInItsGroup() {
    Shape job = JobShape.of("hinged-flap");
    Field requirements = job.field("requirements").orElseThrow();
    Map<String, Field> asked = new LinkedHashMap<>(((Shape) requirements.kind()).fields());
    Field plain = Field.optional("maxNoiseDb", new Kind.Amount(Bound.between(0, 120, "dB")));
    asked.put("maxNoiseDb", plain);
    asked.put("quiet", Field.withDefault("quiet", new Kind.Flag(), false).in(Section.BEHAVIOUR));
    Map<String, Field> fields = new LinkedHashMap<>(job.fields());
    Shape more = new Shape("requirements", asked);
    fields.put("requirements", Field.withDefaults("requirements", more).in(Section.REQUIREMENTS));
    FormFields form = form(new Shape("job", fields), List.of());
    assertEquals("field", look(form, Section.REQUIREMENTS, "requirements.maxNoiseDb"));
    assertEquals("tick", look(form, Section.BEHAVIOUR, "requirements.quiet"));
  }

  @Test
  void aFoldedGroupOpensWhereSomethingInItIsWrong() {
    Fault fault = new Fault("#/requirements/maxStopSpeedMmPerS", 0, "> 0 mm/s", "out-of-bounds");
    FormFields form = form(JobShape.of("hinged-flap"), List.of(fault));
    assertTrue(group(form, Section.MORE_GEOMETRY).wrong());
    assertFalse(group(form, Section.BEHAVIOUR).wrong());
    Fault whole = new Fault("#/weights", "0", "> 0", "out-of-bounds");
    assertTrue(group(form(JobShape.of("seat-column"), List.of(whole)), Section.WEIGHTS).wrong());
  }

  private static FormFields form(Shape shape, List<Fault> faults) {
    return new FormFields(Wording.english(), shape, Map.of(), faults);
  }

  private static FieldGroup group(FormFields form, Section group) {
    return form.groups().stream()
        .filter(each -> each.code().equals(group.code()))
        .findFirst()
        .orElseThrow();
  }

  private static String look(FormFields form, Section group, String name) {
    return group(form, group).members().stream()
        .filter(member -> member.name().equals(name))
        .findFirst()
        .orElseThrow()
        .look();
  }
}
