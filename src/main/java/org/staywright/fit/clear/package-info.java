/** The least change that makes a near part fit, and what contradicts itself. */
@NullMarked
package org.staywright.fit.clear;

import org.jspecify.annotations.NullMarked;
