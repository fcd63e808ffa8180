/** Mechanism and springs in time: damping, heat, motion, and what a hand feels. SI throughout. */
package org.staywright.motion;
