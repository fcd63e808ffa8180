package org.staywright.web.field;

/**
 * A labelled value.
 *
 * @param label in words
 * @param value with its unit
 */
public record Labelled(String label, String value) {}
