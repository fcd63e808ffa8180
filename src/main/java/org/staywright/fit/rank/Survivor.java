package org.staywright.fit.rank;

import org.staywright.fit.assess.Path;
import org.staywright.part.Fitting;

/**
 * A row of the range that its lengths do not rule out.
 *
 * @param row of the range
 * @param rod the end fitting to try first
 * @param tube the end fitting to try first
 * @param compressed shortest length of spring and fittings, m
 * @param extended longest length of spring and fittings, m
 * @param gasLeft share of the gas at the end of the service
 * @param path it leaves
 */
record Survivor(
    int row,
    Fitting rod,
    Fitting tube,
    double compressed,
    double extended,
    double gasLeft,
    Path path) {}
