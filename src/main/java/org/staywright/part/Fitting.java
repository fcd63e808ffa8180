package org.staywright.part;

/**
 * An end fitting or bracket in the stock range. SI.
 *
 * @param number part number
 * @param description in the range's own words, null where none was given
 * @param type what it is
 * @param finish surface
 * @param thread it screws onto or is fixed by, null for a clip
 * @param lengthToCentre from the thread's shoulder to the centre of the joint, m
 * @param rating load it carries, N
 * @param swing angle it gives way to either side of its plane, rad
 * @param ballDiameter of socket, stud or clip, 0 for none, m
 * @param pinDiameter of eyelet or clevis, 0 for none, m
 * @param mass kg
 * @param offer price, stock and lead time
 */
public record Fitting(
    String number,
    String description,
    FittingType type,
    Finish finish,
    String thread,
    double lengthToCentre,
    double rating,
    double swing,
    double ballDiameter,
    double pinDiameter,
    double mass,
    Offer offer) {}
