package org.staywright.unit;

import org.jspecify.annotations.Nullable;

/**
 * One thing wrong with an input: where it stands, what it was, what would have been right.
 *
 * @param where JSON pointer, query parameter or column of the input
 * @param value the value as given, null when it is missing
 * @param bound what would have been accepted, in symbols that need no translation ("&gt; 0 kg")
 * @param code key of the sentence that explains the fault and its mend
 */
public record Fault(String where, @Nullable Object value, String bound, String code) {

  /** The same fault at another place: a record of the core knows its field, not the document. */
  public Fault at(String place) {
    return new Fault(place, value, bound, code);
  }
}
