package org.staywright.form.schema;

import java.util.List;
import org.staywright.part.Coded;

/** What fields stand together in a form; groups stand in the order of their constants. */
public interface Group extends Coded {

  int ordinal();

  /** Whether it opens only when asked, or where something in it is wrong. */
  boolean folded();

  /** Dotted names of what comes before its other fields, in order: fields or objects of fields. */
  List<String> first();
}
