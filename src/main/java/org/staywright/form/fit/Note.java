package org.staywright.form.fit;

/**
 * A caution or an advice in words.
 *
 * @param code of its rule
 * @param message its sentence
 */
public record Note(String code, String message) {}
