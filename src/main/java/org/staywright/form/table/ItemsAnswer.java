package org.staywright.form.table;

import java.util.List;

/** A list that is short enough to be sent whole. */
public record ItemsAnswer<T>(List<T> items) {}
