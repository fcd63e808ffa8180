package org.staywright.web;

import io.quarkus.qute.RawString;

/**
 * A drawing on a page.
 *
 * @param drawing of it
 * @param caption how to read it
 */
public record Graph(RawString drawing, String caption) {}
