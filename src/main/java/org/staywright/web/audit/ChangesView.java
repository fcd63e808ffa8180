package org.staywright.web.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.staywright.database.Change.Action;
import org.staywright.database.Change.Subject;
import org.staywright.database.Recorded;
import org.staywright.web.shell.Address;
import org.staywright.wording.Wording;

/**
 * A page of the changes.
 *
 * @param asked what was typed into the search, by field
 * @param subjects that can be asked for
 * @param actions likewise
 * @param faults of the search, in words
 * @param rows the newest first
 * @param older address of those before them, "" for none
 * @param newest address of the first page, "" where this is it
 * @param csv address of all that were asked for, as a file
 */
record ChangesView(
    Map<String, String> asked,
    List<Option> subjects,
    List<Option> actions,
    List<String> faults,
    List<ChangeRow> rows,
    String older,
    String newest,
    String csv) {

  static final int SIZE = 50;

  private static final String PATH = "/changes";
  private static final String BEFORE = "before";

  /** A word that can be chosen. */
  record Option(String code, String label, boolean chosen) {}

  /**
   * @param found one more than are shown, where there are more
   */
  static ChangesView of(
      Map<String, List<String>> query, List<Recorded> found, List<String> faults, Wording wording) {
    Map<String, String> asked = new LinkedHashMap<>();
    ChangesQuery.SEARCH
        .fields()
        .keySet()
        .forEach(name -> asked.put(name, query.getOrDefault(name, List.of("")).get(0)));
    Map<String, List<String>> search = new LinkedHashMap<>();
    asked.forEach((name, value) -> search.put(name, List.of(value)));
    List<Recorded> rows = found.subList(0, Math.min(SIZE, found.size()));
    Address first = new Address(PATH, search);
    return new ChangesView(
        asked,
        Stream.of(Subject.values())
            .map(each -> option("subject", each.code(), asked, wording))
            .toList(),
        Stream.of(Action.values())
            .map(each -> option("action", each.code(), asked, wording))
            .toList(),
        faults,
        rows.stream().map(row -> ChangeRow.of(row, wording)).toList(),
        found.size() > SIZE ? first.with(BEFORE, rows.get(SIZE - 1).place().code()).toString() : "",
        query.containsKey(BEFORE) ? first.toString() : "",
        new Address("/api/v1/changes.csv", search).toString());
  }

  private static Option option(
      String field, String code, Map<String, String> asked, Wording wording) {
    return new Option(
        code, wording.text("audit." + field + "." + code), code.equals(asked.get(field)));
  }

  /** What is ours of a query: a page may be asked for its language besides. */
  static Map<String, List<String>> known(Map<String, List<String>> query) {
    Map<String, List<String>> known = new LinkedHashMap<>(query);
    known.keySet().retainAll(ChangesQuery.PAGE.fields().keySet());
    known.remove("size");
    return known;
  }
}
