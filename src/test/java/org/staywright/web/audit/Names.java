package org.staywright.web.audit;

/** What a sender says of himself, by a header of the interface or a field of a form. */
record Names(String from, String by) {

  static final Names ANNA = new Names("Anna Berg <anna@example.com>", "Anna Berg");
  static final Names NONE = new Names(null, null);
}
