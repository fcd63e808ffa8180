/** Mechanism and springs in time: damping, heat, motion, and what a hand feels. SI throughout. */
@NullMarked
package org.staywright.motion;

import org.jspecify.annotations.NullMarked;
