package org.staywright.web.field;

import java.util.List;
import org.staywright.form.schema.Group;
import org.staywright.form.schema.Kind;
import org.staywright.form.schema.Shape;

/**
 * A group of fields as a page shows it, whatever fields the shape has in it.
 *
 * @param code of the group
 * @param title in words
 * @param about what to know of all of them, "" for nothing
 * @param folded whether it opens only when asked, or where something in it is wrong
 * @param wrong whether anything in it is
 * @param members its fields
 */
public record FieldGroup(
    String code, String title, String about, boolean folded, boolean wrong, List<Member> members) {

  /**
   * @param name of the field, dotted
   * @param look the tag that shows it
   * @param field for that tag
   * @param about what to know of it, "" for nothing
   */
  public record Member(String name, String look, Object field, String about) {}

  /** A choice that is made by its pictures. */
  private static final String PICTURED = "load.opens";

  public FieldGroup {
    members = List.copyOf(members);
  }

  static FieldGroup of(Group group, List<String> names, Shape shape, FormFields form) {
    return new FieldGroup(
        group.code(),
        form.said("group." + group.code()),
        form.said("group." + group.code() + ".about"),
        group.folded(),
        names.stream().anyMatch(form::wrong) || form.wrong(group),
        names.stream()
            .filter(name -> !FormFields.UNSEEN.contains(name) && !name.equals(Slot.BESIDE))
            .map(name -> member(name, shape.field(name).orElseThrow().kind(), form))
            .toList());
  }

  private static Member member(String name, Kind kind, FormFields form) {
    boolean fitting = name.startsWith(FormFields.FITTINGS);
    return new Member(
        name,
        fitting ? "fitting" : look(name, kind),
        fitting ? form.fitting(name.substring(FormFields.FITTINGS.length())) : form.of(name),
        form.said("field." + name + ".about"));
  }

  private static String look(String name, Kind kind) {
    if (kind instanceof Kind.Choice) {
      return name.equals(PICTURED) ? "turning" : "choice";
    }
    if (kind instanceof Kind.Text) {
      return "text";
    }
    if (kind instanceof Kind.Flag) {
      return "tick";
    }
    if (kind instanceof Kind.Listing) {
      return "ticks";
    }
    if (kind instanceof Kind.Many) {
      return "area";
    }
    return kind instanceof Shape ? "point" : "field";
  }
}
