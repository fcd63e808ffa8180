package org.staywright.mechanism;

/**
 * What a load may weigh.
 *
 * @param nominal kg
 * @param heaviest kg
 * @param lightest kg
 */
public record Masses(double nominal, double heaviest, double lightest) {}
