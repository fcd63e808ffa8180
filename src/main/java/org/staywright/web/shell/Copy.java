package org.staywright.web.shell;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.staywright.database.Author;
import org.staywright.form.job.ChoiceForm;
import org.staywright.form.schema.FlatForm;
import org.staywright.form.schema.JsonText;
import org.staywright.job.Jobs;
import org.staywright.job.Ordering;
import org.staywright.job.SavedJob;
import org.staywright.job.order.Choice;

/** A saved job once more, under a name that says so. */
public final class Copy {

  private static final int LONGEST_NAME = 200;

  private Copy() {}

  public static SavedJob of(Author author, SavedJob job, Jobs jobs, Ordering ordering) {
    ObjectNode document = Jobs.document(job);
    document.put("name", name(job));
    SavedJob copy = jobs.add(author, document);
    return job.choice == null
        ? copy
        : jobs.choose(
            author,
            copy.id,
            copy.version,
            ordering.range(job.choice.revision()),
            ChoiceForm.read(new JsonText(wish(job.choice), List.of())));
  }

  private static String name(SavedJob job) {
    String name = job.name.isBlank() ? job.id.toString() : job.name;
    String copied = PageText.text("saved.copy-of", name);
    int end = Math.min(copied.length(), LONGEST_NAME);
    // Never half of a character outside the basic plane.
    return copied.substring(0, Character.isHighSurrogate(copied.charAt(end - 1)) ? end - 1 : end);
  }

  private static ObjectNode wish(Choice choice) {
    Map<String, List<String>> wish = new HashMap<>();
    wish.put("partNumber", List.of(choice.part()));
    wish.put("count", List.of(choice.count().toString()));
    if (choice.fitted()) {
      wish.put("fittings.rodEnd", List.of(choice.rodFitting()));
      wish.put("fittings.tubeEnd", List.of(choice.tubeFitting()));
    }
    wish.put("sets", List.of(choice.sets().toString()));
    wish.put("spares", List.of(choice.spares().toString()));
    wish.put("brackets", List.of(choice.brackets().toString()));
    wish.put("evenIfMisfit", List.of(Boolean.toString(choice.despite())));
    return FlatForm.tree(ChoiceForm.SHAPE, wish);
  }
}
