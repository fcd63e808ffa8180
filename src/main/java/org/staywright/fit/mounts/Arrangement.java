package org.staywright.fit.mounts;

import org.staywright.fit.assess.Fit;
import org.staywright.fit.assess.FitCurve;
import org.staywright.mechanism.Mounts;

/**
 * Mounts and the stock part that suits them.
 *
 * @param mounts where it hangs
 * @param fit the part assessed there
 * @param curve its hand forces
 * @param sensitivity what a millimetre at the mounts changes
 */
public record Arrangement(Mounts mounts, Fit fit, FitCurve curve, Sensitivity sensitivity) {}
